/*
 * For `node --import`: the clock of the process begins at CLOCK_BEGINS_AT and goes on from there, so that pictures of the app
 * show the same dates whenever they are taken. The app itself knows nothing of it.
 */
const beginsAt = Date.parse(process.env['CLOCK_BEGINS_AT'] ?? '');
if (Number.isNaN(beginsAt))
  throw new Error('CLOCK_BEGINS_AT has to be an instant, such as 2027-06-14T09:00:00Z.');
const aheadMs = beginsAt - Date.now();

globalThis.Date = new Proxy(Date, {
  construct: (real, parts, made) =>
    Reflect.construct(real, parts.length === 0 ? [real.now() + aheadMs] : parts, made),
  get: (real, name) => (name === 'now' ? () => real.now() + aheadMs : Reflect.get(real, name)),
});
