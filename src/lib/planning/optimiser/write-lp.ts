import type { MenuProgram, Row } from './menu-program.ts';

/** Terms on a line; readers of the format want lines of at most 255 or 510 characters. */
const TERMS_PER_LINE = 4;
/** Digits of a number: more than any solver keeps to. */
const DIGITS = 13;
const number = (value: number): string => String(Number(value.toPrecision(DIGITS)));

/**
 * A program as a file in CPLEX LP format, which most solvers read.
 *
 * @param title goes into a comment on the first line
 */
export function writeLp(program: MenuProgram, title: string): string {
  const nameOf = (column: number) => program.columns[column]?.name ?? '';
  const written = (terms: Row['terms']) => {
    const lines: string[] = [];
    for (let at = 0; at < terms.length; at += TERMS_PER_LINE)
      lines.push(
        terms
          .slice(at, at + TERMS_PER_LINE)
          .map(
            ([column, coefficient]) =>
              `${coefficient < 0 ? '-' : '+'} ${number(Math.abs(coefficient))} ${nameOf(column)}`,
          )
          .join(' '),
      );
    return lines.join('\n ');
  };
  const costs = program.columns.flatMap(({ cost }, column) => (cost === 0 ? [] : [[column, cost] as const]));
  const rows = program.rows.flatMap(({ name, terms, lower, upper }) => {
    if (terms.length === 0) return [];
    const left = written(terms);
    if (lower === upper) return [` ${name}: ${left} = ${number(lower)}`];
    return [
      ...(lower > -Infinity
        ? [` ${name}${upper < Infinity ? '_low' : ''}: ${left} >= ${number(lower)}`]
        : []),
      ...(upper < Infinity ? [` ${name}: ${left} <= ${number(upper)}`] : []),
    ];
  });
  return [
    `\\ ${title.replaceAll(/[^\p{L}\p{N} .,:×-]/gu, ' ')}`,
    'Minimize',
    ` points: ${written(costs)}`,
    'Subject To',
    ...rows,
    'Bounds',
    ...program.columns.flatMap(({ name, upper }) =>
      upper < Infinity ? [` 0 <= ${name} <= ${number(upper)}`] : [],
    ),
    'Generals',
    ...program.columns.flatMap(({ name, whole }) => (whole ? [` ${name}`] : [])),
    'End',
    '',
  ].join('\n');
}
