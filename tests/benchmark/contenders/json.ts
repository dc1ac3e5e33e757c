import { getLanguageService } from 'vscode-json-languageservice';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { recordSchema } from '../schema.ts';
import { type Contender, letterChange } from './contender.ts';

const service = getLanguageService({});
service.configure({
  validate: true,
  schemas: [{ uri: 'file:///record.schema.json', fileMatch: ['*.json'], schema: recordSchema }],
});

/** What the JSON service finds in a document. */
export const validateJson = (document: TextDocument) =>
  service.doValidation(document, service.parseJSONDocument(document), { schemaValidation: 'error' });

export const json: Contender = {
  name: 'vscode-json-languageservice',
  notation: 'json',
  open: async (text) => {
    let document = TextDocument.create('file:///a.json', 'json', 1, text);
    const findings = (await validateJson(document)).length;
    const edit = async (...change: Parameters<typeof letterChange>): Promise<number> => {
      document = TextDocument.update(document, [letterChange(...change)], document.version + 1);
      return (await validateJson(document)).length;
    };
    return { checked: { edit }, findings };
  },
};
