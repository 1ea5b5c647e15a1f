/** The part of the library that is compared with; it brings no types of its own. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(units: number): void;
    GetStandardAtmPressure(altitudeM: number): number;
    GetSatVapPres(temperatureC: number): number;
  };
  export default psychrolib;
}
