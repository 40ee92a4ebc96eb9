declare module 'jstat' {
  interface Spread {
    cdf(x: number, ...shape: number[]): number;
    inv(p: number, ...shape: number[]): number;
    pdf(x: number, ...shape: number[]): number;
  }
  const jStat: {
    readonly normal: Spread;
    readonly beta: Spread;
    readonly binomial: Spread;
    readonly lognormal: Spread;
    readonly studentt: Spread;
    readonly hypgeom: Pick<Spread, 'pdf'>;
  };
  const library: { readonly jStat: typeof jStat };
  export = library;
}

declare module 'ml-regression-theil-sen' {
  export class TheilSenRegression {
    constructor(x: readonly number[], y: readonly number[]);
    readonly slope: number;
    readonly intercept: number;
  }
}
