declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(units: number): void;
    GetStandardAtmPressure(altitudeM: number): number;
    GetSatVapPres(temperatureC: number): number;
  };
  export default psychrolib;
}
