/** What a cap is called in what is printed or saved: one whose name was taken away is simply called a cap. */
export const calledName = (name: string): string => name.trim() || 'Cap';
