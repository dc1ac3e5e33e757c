/** What the server and its editor say to each other beyond the language server protocol. Plain types, nothing imported. */

/** Request, editor → server: the preview of one open log. Answered with `Preview`, or null for a document that is not open. */
export const previewRequest = 'drillhand/preview';

export interface PreviewParams {
  readonly textDocument: { readonly uri: string };
}

/**
 * A log's computed record, its drawing and its findings, ready to be shown.
 *
 * `html` is a fragment for the inside of `<main>`, with every piece of the user's text escaped, no script, no style
 * element and no style attribute. Its top-level elements are sections that carry a `data-section` id each, unique in the
 * fragment. An element that comes from a line carries `data-line`, counted from 0, and `tabindex="0"`. The element that
 * says how many findings there are carries `data-summary`.
 */
export interface Preview {
  readonly version: number;
  readonly title: string;
  readonly html: string;
}

/** Notification, server → editor: a version of an open log has been analysed, and its preview may have changed. */
export const analysedNotification = 'drillhand/analysed';

export interface AnalysedParams {
  readonly uri: string;
  readonly version: number;
}
