import { expect, test } from 'vitest';
import { cameFromHere, isLocalhost, isLoopbackAddress, originAsked, pathWithin } from './own-origin.ts';

const HOME = { address: '127.0.0.1', port: 4810 };
const IN_NETWORK = { address: '::ffff:192.168.1.20', port: 4810 };
const known = { names: ['larder.local', 'pantry:8080'], behind: 'https://larder.home.arpa' };

test.each([
  ['127.0.0.1:4810', HOME, 'http://127.0.0.1:4810'],
  ['192.168.1.20:4810', IN_NETWORK, 'http://192.168.1.20:4810'],
  ['[fd00::20]:4810', { address: 'fd00::20', port: 4810 }, 'http://[fd00::20]:4810'],
  ['192.168.1.20', { address: '192.168.1.20', port: 80 }, 'http://192.168.1.20'],
  ['Larder.local:4810', IN_NETWORK, 'http://larder.local:4810'],
  ['larder.local', IN_NETWORK, 'http://larder.local'],
  ['pantry:8080', IN_NETWORK, 'http://pantry:8080'],
  ['larder.home.arpa', HOME, 'https://larder.home.arpa'],
])('%s is our own name', (host, arrival, origin) => expect(originAsked(host, arrival, known)).toBe(origin));

test.each([
  [undefined, HOME],
  ['', HOME],
  ['elsewhere.example:4810', HOME],
  ['elsewhere.example', IN_NETWORK],
  ['127.0.0.1:4811', HOME],
  ['127.0.0.1', HOME],
  ['127.0.0.1:4810', IN_NETWORK],
  ['192.168.1.21:4810', IN_NETWORK],
  ['larder.local.elsewhere.example:4810', IN_NETWORK],
  ['larder.home.arpa:4810', HOME],
  ['127.0.0.1:4810@elsewhere.example', HOME],
  ['localhost:4810', HOME],
])('%s is not', (host, arrival) => expect(originAsked(host, arrival, known)).toBeUndefined());

test('a machine may call itself localhost; nobody else may', () => {
  expect(isLocalhost('localhost:4810', HOME)).toBe(true);
  expect(isLocalhost('localhost.elsewhere.example:4810', HOME)).toBe(false);
  expect(isLocalhost('localhost:4810', IN_NETWORK)).toBe(false);
});

test('loopback addresses', () => {
  for (const address of ['127.0.0.1', '127.0.0.2', '::1', '::ffff:127.0.0.1'])
    expect(isLoopbackAddress(address), address).toBe(true);
  for (const address of ['0.0.0.0', '::', '192.168.1.20', '128.0.0.1', 'fd00::1'])
    expect(isLoopbackAddress(address), address).toBe(false);
});

const ORIGIN = 'http://127.0.0.1:4810';
test.each<[Record<string, string>, boolean]>([
  [{ origin: ORIGIN }, true],
  [{ origin: ORIGIN, 'sec-fetch-site': 'cross-site' }, true],
  [{ 'sec-fetch-site': 'same-origin' }, true],
  [{ referer: `${ORIGIN}/shelf` }, true],
  [{}, false],
  [{ origin: 'null' }, false],
  [{ origin: 'http://127.0.0.1:4811' }, false],
  [{ origin: 'https://127.0.0.1:4810' }, false],
  [{ origin: `${ORIGIN}.elsewhere.example` }, false],
  [{ origin: 'http://elsewhere.example', referer: `${ORIGIN}/shelf` }, false],
  [{ 'sec-fetch-site': 'same-site' }, false],
  [{ 'sec-fetch-site': 'cross-site', referer: `${ORIGIN}/shelf` }, false],
  [{ referer: `http://elsewhere.example/${ORIGIN}/` }, false],
  [{ referer: 'nonsense' }, false],
])('%j came from here: %s', (headers, came) => expect(cameFromHere(new Headers(headers), ORIGIN)).toBe(came));

test('what keeps nothing is answered to programs that say nothing, and to no page of another site', () => {
  expect(cameFromHere(new Headers(), ORIGIN, true)).toBe(true);
  expect(cameFromHere(new Headers({ origin: 'http://elsewhere.example' }), ORIGIN, true)).toBe(false);
  expect(cameFromHere(new Headers({ 'sec-fetch-site': 'cross-site' }), ORIGIN, true)).toBe(false);
});

test.each([
  ['/shelf?search=D01', '/shelf?search=D01'],
  ['/trips/../shelf', '/shelf'],
  [undefined, '/'],
  ['', '/'],
  ['shelf', '/'],
  ['https://elsewhere.example/', '/'],
  ['//elsewhere.example/', '/'],
  ['/\\elsewhere.example/', '/'],
  ['/.//elsewhere.example/', '/'],
  ['/a/..//elsewhere.example/', '/'],
  ['/\t/elsewhere.example/', '/'],
  ['javascript:alert(1)', '/'],
])('after signing in, %j leads to %s', (path, to) => expect(pathWithin(path, ORIGIN)).toBe(to));
