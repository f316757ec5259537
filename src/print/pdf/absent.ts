/** Stands in for packages that jsPDF would load to draw web pages and SVG, which no pattern needs. */
export default {};
