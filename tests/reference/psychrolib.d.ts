/** The few functions used of the npm package psychrolib 1.1.1 (MIT), which brings no types. °C, Pa, kg/kg, humidity 0 to 1. */
declare module 'psychrolib' {
  const psychrometrics: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulb: number): number;
    GetTDewPointFromVapPres(dryBulb: number, vaporPressure: number): number;
  };
  export default psychrometrics;
}
