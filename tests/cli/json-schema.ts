import { getLanguageService, type JSONSchema, TextDocument } from 'vscode-json-languageservice';

/** What a JSON schema finds wrong with a value, as a general library reads the two. */
export async function faultsAgainstSchema(schema: object, value: unknown): Promise<string[]> {
  const service = getLanguageService({});
  const document = TextDocument.create('file:///value.json', 'json', 1, JSON.stringify(value));
  const faults = await service.doValidation(
    document,
    service.parseJSONDocument(document),
    { schemaValidation: 'error' },
    schema as JSONSchema,
  );
  return faults.map(({ message }) => (typeof message === 'string' ? message : message.value));
}
