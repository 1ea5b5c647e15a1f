/* `npm run schema`: writes docs/schema from the model. With --check it only tells whether what is there is current. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { Batch } from '../lib/planning/model/batch.ts';
import { Food } from '../lib/planning/model/composition.ts';
import { Kitchen } from '../lib/planning/model/kitchen.ts';
import { StatedLot } from '../lib/planning/model/stated-lot.ts';
import { Recipe } from '../lib/planning/model/recipe.ts';
import { SettingsFields } from '../lib/planning/model/settings.ts';
import { WordedPlan } from '../lib/presentation/worded-plan.ts';
import { Trip } from '../lib/planning/model/trip.ts';
import { ROOT } from './run.ts';

const FOLDER = path.join(ROOT, 'docs/schema');

type Entry = {
  readonly file: string;
  readonly title: string;
  readonly schema: z.ZodType;
  readonly io: 'input' | 'output';
};
const MORE_RULES = 'The program also checks rules that span several fields.';
const SCHEMAS: readonly (Entry & { readonly description: string })[] = [
  {
    file: 'trip.json',
    title: 'Trip',
    schema: Trip,
    io: 'input',
    description: `A trip as a person enters it. ${MORE_RULES}`,
  },
  {
    file: 'stock-row.json',
    title: 'Stock row',
    schema: StatedLot,
    io: 'input',
    description: `Pouches of one sealing that are alike; a stock is a list of them. What is not said of one is estimated where it is needed. ${MORE_RULES}`,
  },
  {
    file: 'settings.json',
    title: 'Settings',
    schema: SettingsFields,
    io: 'input',
    description: 'What holds for every trip of a household.',
  },
  {
    file: 'food.json',
    title: 'Food',
    schema: Food,
    io: 'input',
    description: 'What 100 g of a food hold: a row of a composition table, or a label.',
  },
  {
    file: 'recipe.json',
    title: 'Recipe',
    schema: Recipe,
    io: 'input',
    description: `A dish as it is cooked, before it is dried. ${MORE_RULES}`,
  },
  {
    file: 'batch.json',
    title: 'Batch',
    schema: Batch,
    io: 'input',
    description: `One cooking that was dried together, from the pot to the sealed pouches. ${MORE_RULES}`,
  },
  {
    file: 'kitchen.json',
    title: 'Kitchen',
    schema: Kitchen,
    io: 'input',
    description: `What a household dries, seals and reckons with. ${MORE_RULES}`,
  },
  {
    file: 'trip-plan.json',
    title: 'Trip plan',
    schema: WordedPlan,
    io: 'output',
    description:
      'What `npm run plan` and `POST /api/plan` answer: the plan of a trip with a stock, codes with their texts.',
  },
];

function text({ title, description, schema, io }: (typeof SCHEMAS)[number]): string {
  const { $schema, ...rest } = z.toJSONSchema(schema, { target: 'draft-2020-12', io });
  return `${JSON.stringify({ $schema, title, description, ...rest }, null, 2)}\n`;
}

function onDisk(file: string): string | undefined {
  try {
    return readFileSync(path.join(FOLDER, file), 'utf8');
  } catch {
    return undefined;
  }
}

if (process.argv.includes('--check')) {
  const stale = SCHEMAS.filter((entry) => onDisk(entry.file) !== text(entry)).map(
    ({ file }) => `docs/schema/${file}`,
  );
  if (stale.length > 0) {
    console.error(`Not current: ${stale.join(', ')}. Run "npm run schema" and commit what it writes.`);
    process.exitCode = 1;
  }
} else {
  mkdirSync(FOLDER, { recursive: true });
  for (const entry of SCHEMAS) writeFileSync(path.join(FOLDER, entry.file), text(entry));
}
