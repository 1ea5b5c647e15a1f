import { describe, expect, it, test } from 'vitest';
import { exampleLot } from '../../../tests/support/examples.ts';
import { isLoopback, readLabels } from './label-request.ts';

const LOTS = [
  exampleLot({ code: 'D1', pouches: 4 }),
  exampleLot({ code: 'D2', pouches: 0 }),
  exampleLot({ code: 'B 1', pouches: 3 }),
  exampleLot({ code: 'MANY', pouches: 501 }),
];
const read = (query: string, unitSystem: 'metric' | 'us' = 'metric') =>
  readLabels(new URLSearchParams(query), LOTS, unitSystem, 'http://127.0.0.1:4810');
const problems = (query: string) => {
  const { request, problems: found } = read(query);
  expect(request).toBeUndefined();
  return found;
};

describe('readLabels', () => {
  it('reads lots, paper, first place, copies and address', () => {
    const { request } = read(
      'code=D1&code=B+1&code=D1&code=&paper=letter-3x8&from=24&copies=2&address=192.168.1.20:4810/',
    );
    expect(request?.lots.map(({ lot, copies }) => [lot.code, copies])).toEqual([
      ['D1', 2],
      ['B 1', 2],
    ]);
    expect(request).toMatchObject({
      paper: { id: 'letter-3x8' },
      from: 24,
      address: 'http://192.168.1.20:4810',
    });
  });

  it.each(['', '&copies=', '&copies=pouches'])(
    'takes a label for each pouch at home where the query is %j',
    (more) => {
      const { request } = read(`code=D1&code=D2&code=B+1${more}`);
      expect(request?.lots.map(({ copies }) => copies)).toEqual([4, 0, 3]);
      expect(request).toMatchObject({ from: 1, address: 'http://127.0.0.1:4810' });
    },
  );

  it('takes the paper of the country of the units', () => {
    expect(read('code=D1').request?.paper.name).toContain('A4');
    expect(read('code=D1', 'us').request?.paper.name).toContain('US letter');
  });

  it('asks for nothing, and finds nothing wrong, before a lot is chosen', () => {
    expect(read('')).toMatchObject({ request: undefined, problems: [], chosen: [] });
  });

  it.each([
    ['code=X&code=D1&code=Y', 'code', '"X", "Y"'],
    ['code=D1&paper=a9', 'paper', '"a9"'],
    ['code=D1&paper=a4-2x6&from=13', 'from', 'from 1 to 12'],
    ['code=D1&from=0', 'from', 'from 1 to 8'],
    ['code=D1&from=1.5', 'from', 'from 1 to 8'],
    ['code=D1&from=x', 'from', 'not a number'],
    ['code=D1&copies=0', 'copies', 'from 1 to 500'],
    ['code=D1&copies=some', 'copies', 'not a number'],
    ['code=MANY', 'copies', '501 labels'],
    ['code=D1&code=B+1&copies=251', 'copies', '502 labels'],
    ['code=D2', 'copies', 'has a pouch at home'],
    ['code=D1&address=the+kitchen', 'address', 'such as http'],
    ['code=D1&address=ftp://192.168.1.20', 'address', 'such as http'],
    ['code=D1&address=http://192.168.1.20/shelf', 'address', 'nothing behind it'],
  ])('names what is wrong with %s', (query, field, text) => {
    expect(problems(query)).toEqual([{ field, message: expect.stringContaining(text) }]);
  });

  it('keeps what was entered', () => {
    expect(read('code=D1&from=99&address=nowhere').entered).toMatchObject({
      from: ['99'],
      address: ['nowhere'],
    });
  });
});

test.each([
  ['http://127.0.0.1:4810', true],
  ['http://localhost', true],
  ['http://shelf.localhost:80', true],
  ['http://[::1]:4810', true],
  ['http://192.168.1.20:4810', false],
  ['http://localhost.example', false],
  ['https://larder.home', false],
])('%s is this device alone: %s', (address, expected) => {
  expect(isLoopback(address)).toBe(expected);
});
