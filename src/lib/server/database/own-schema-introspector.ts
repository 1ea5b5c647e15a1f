import {
  PostgresIntrospector,
  sql,
  type DatabaseMetadataOptions,
  type Kysely,
  type TableMetadata,
} from 'kysely';
import { DEFAULT_MIGRATION_LOCK_TABLE, DEFAULT_MIGRATION_TABLE } from 'kysely/migration';

type Column = {
  readonly schema: string;
  readonly table: string;
  readonly column: string;
  readonly type: string;
  readonly isNullable: boolean;
  readonly default: string | null;
};

/** Looks at the tables of the program's own schema. Asked about all there are, PostgreSQL fails where somebody drops one of theirs at the same moment. */
export class OwnSchemaIntrospector extends PostgresIntrospector {
  readonly #db: Kysely<unknown>;

  constructor(db: Kysely<unknown>) {
    super(db);
    this.#db = db;
  }

  override async getTables(
    { withInternalKyselyTables }: DatabaseMetadataOptions = { withInternalKyselyTables: false },
  ): Promise<TableMetadata[]> {
    const { rows } = await sql<Column>`
      select table_schema as "schema", table_name as "table", column_name as "column", data_type as "type",
        is_nullable = 'YES' as "isNullable", column_default as "default"
      from information_schema.columns where table_schema = current_schema() order by table_name, ordinal_position
    `.execute(this.#db);
    const internal = withInternalKyselyTables ? [] : [DEFAULT_MIGRATION_TABLE, DEFAULT_MIGRATION_LOCK_TABLE];
    return [...Map.groupBy(rows, ({ table }) => table)]
      .filter(([name]) => !internal.includes(name))
      .map(([name, columns]) => ({
        name,
        schema: columns[0]!.schema,
        isView: false,
        isForeign: false,
        columns: columns.map((column) => ({
          name: column.column,
          dataType: column.type,
          isNullable: column.isNullable,
          hasDefaultValue: column.default !== null,
          isAutoIncrementing: column.default?.startsWith('nextval(') ?? false,
        })),
      }));
  }
}
