/** The one corner of jstat that the tests ask as a second opinion. */
declare module 'jstat' {
  const jstat: {
    jStat: {
      normal: {
        pdf(x: number, mean: number, deviation: number): number;
        cdf(x: number, mean: number, deviation: number): number;
        inv(p: number, mean: number, deviation: number): number;
      };
    };
  };
  export default jstat;
}
