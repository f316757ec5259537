/** The address of a worker that is built with the page and shares its chunks. */
declare module '*?beside' {
  const address: string;
  export default address;
}
