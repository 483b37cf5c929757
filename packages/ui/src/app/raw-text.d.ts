declare module "*?raw" {
  const text: string;
  export default text;
}

declare module "*?url" {
  const address: string;
  export default address;
}
