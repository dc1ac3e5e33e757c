declare module 'cephes' {
  const cephes: {
    /** Exponential integral of order n. */
    expn(n: number, x: number): number;
  };
  export default cephes;
}
