/** Texts on which a careless reader or pattern tries ever more ways, each as long as is wanted. */
export const HOSTILE_TEXTS: readonly ((n: number) => string)[] = [
  (n) => '1'.repeat(n),
  (n) => `1${' '.repeat(n)}x`,
  (n) => `${'1 '.repeat(n)}/`,
  (n) => '1,'.repeat(n),
  (n) => `${' '.repeat(n)}watr`,
  (n) => `2026-01-01${'T '.repeat(n)}1:`,
  (n) => `1${'a'.repeat(n)}1${'a'.repeat(n)}`,
  (n) => '-'.repeat(n),
  (n) => `${'('.repeat(n)}), costs `,
];
