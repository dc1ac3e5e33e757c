import fc from 'fast-check';
import type * as z from 'zod';

/** Text that would do harm where it were not escaped, and text that spoils a file. */
export const hostileTexts: readonly string[] = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onload='alert(1)",
  ']]>',
  '-->',
  '&amp;&lt;&#0;',
  '</text></svg><svg onload=alert(1)>',
  'javascript:alert(1)',
  '\u0000\u0001\u001b[31m\ud800\udfff\uffff',
  '\u202egnp.exe',
  'constructor',
  '__proto__',
  'Søren Łukaszewicz-Ñandú',
  'W'.repeat(400),
];

const texts = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...hostileTexts) },
  { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
  { weight: 3, arbitrary: fc.constantFrom('m', 'ft', 'mm', 'in', 'L/min', 'cement', 'casing', 'granular', 'coarse') },
);

const numbers = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: -3, max: 120, noNaN: true }) },
  { weight: 2, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) },
  { weight: 1, arbitrary: fc.double() },
  { weight: 1, arbitrary: fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -1e300, 1e300, 0, -0, 601, 627) },
);

const places = new Set(['line', 'start', 'end']);

type Definition = z.core.$ZodTypes['_zod']['def'];
const definitionOf = (schema: z.core.$ZodType): Definition => (schema as z.core.$ZodTypes)._zod.def;

/**
 * Values that a schema admits, drawn at random: lists of up to three, null for anything that may be null, texts and
 * numbers of every kind. Lines and columns are whole numbers from 0.
 */
export function arbitraryOf(schema: z.core.$ZodType, key = ''): fc.Arbitrary<unknown> {
  const definition = definitionOf(schema);
  switch (definition.type) {
    case 'object': {
      const fields = Object.entries(definition.shape).map(([name, each]) => [name, arbitraryOf(each, name)] as const);
      return fc.record(Object.fromEntries(fields));
    }
    case 'array':
      return fc.array(arbitraryOf(definition.element), { maxLength: 3 });
    case 'nullable':
      return fc.option(arbitraryOf(definition.innerType, key), { nil: null, freq: 4 });
    case 'union':
      return fc.oneof(...definition.options.map((each) => arbitraryOf(each)));
    case 'record':
      return fc.dictionary(
        fc.constantFrom('well', 'site', 'owner', 'location', 'permit', 'contractor'),
        arbitraryOf(definition.valueType),
      );
    case 'enum':
      return fc.constantFrom(...Object.values(definition.entries));
    case 'boolean':
      return fc.boolean();
    case 'number':
      return places.has(key) ? fc.nat(5000) : numbers;
    case 'string':
      return texts;
    default:
      throw new Error(`no values for a schema of ${definition.type}`);
  }
}
