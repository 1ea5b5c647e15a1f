import { describe, expect, it } from 'vitest';
import { compare, readEveryday, TABLES, type Compared } from './compare.ts';

const compared: Compared[] = [];

describe('an everyday table', () => {
  it.each(TABLES)('%s comes in as a person reads it', async (name) => {
    const { read, expected } = await readEveryday(name);
    const result = compare(name, read, expected);
    compared.push(result);
    expect(result.wrong).toEqual([]);
    const asked = read.rows.filter(({ status, line }) => status !== 'new' && line in expected.lots);
    expect(asked.map(({ line, problems }) => [line, problems])).toEqual([]);
  });

  it('is one of at least twelve, of whose rows 95 of 100 come in without a change to the file', () => {
    expect(compared.length).toBeGreaterThanOrEqual(12);
    const sum = (of: 'rows' | 'taken') => compared.reduce((total, result) => total + result[of], 0);
    expect(sum('taken')).toBeGreaterThanOrEqual(0.95 * sum('rows'));
  });
});
