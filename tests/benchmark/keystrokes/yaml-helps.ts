import assert from 'node:assert/strict';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { getLanguageService } from 'yaml-language-server';

/** Rejects where YAML's server would offer nothing by a schema: of one with a fault anywhere it takes nothing, and says nothing. */
export async function sureThatYamlHelps(schema: object): Promise<void> {
  const service = getLanguageService({
    schemaRequestService: () => Promise.reject(new Error('no schema is fetched')),
    workspaceContext: { resolveRelativePath: (path) => path },
  });
  service.configure({
    completion: true,
    schemas: [{ uri: 'file:///record.schema.json', fileMatch: ['*.yaml'], schema }],
  });
  for (const [name, text, wanted] of [
    ['head', 'b', 'began'],
    ['layer', 'strata:\n  - from: 0\n    m', 'material'],
    ['ground', 'strata:\n  - from: 0\n    material: ', 'sand and gravel'],
  ] as const) {
    const document = TextDocument.create(`file:///${name}.yaml`, 'yaml', 1, text);
    const { items } = await service.doComplete(document, document.positionAt(text.length), false);
    assert.ok(
      items.some(({ label }) => label === wanted),
      `YAML's server offers no "${wanted}": its keys would be counted without its helps`,
    );
  }
}
