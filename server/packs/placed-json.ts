/** Where a JSON text is wrong; the offset counts UTF-16 units from 0. */
export class JsonFault extends Error {
  constructor(
    message: string,
    readonly offset: number,
  ) {
    super(message);
  }
}

/** A JSON value, with the offset at which each of its parts stands, by its path (`/limits/stickup-least/value`). */
export interface PlacedJson {
  readonly value: unknown;
  readonly offsets: ReadonlyMap<string, number>;
  /** The offset of the name under which each part stands, by the same path. */
  readonly names: ReadonlyMap<string, number>;
}

const deepest = 100;
const blank = /[ \t\r\n]*/y;
const scalar = /"(?:[^"\\]|\\.)*"|[-+.\w]+/y;

class Reader {
  readonly offsets = new Map<string, number>();
  readonly names = new Map<string, number>();
  private at = 0;

  constructor(private readonly text: string) {}

  whole(): unknown {
    const value = this.value('', 0);
    this.skip();
    if (this.at < this.text.length) throw this.fault('text after the end of the JSON value');
    return value;
  }

  private fault(message: string): JsonFault {
    return new JsonFault(message, this.at);
  }

  private skip(): void {
    blank.lastIndex = this.at;
    blank.exec(this.text);
    this.at = blank.lastIndex;
  }

  private takes(character: string): boolean {
    this.skip();
    if (this.text[this.at] !== character) return false;
    this.at += 1;
    return true;
  }

  private value(path: string, depth: number): unknown {
    this.skip();
    if (depth > deepest) throw this.fault('nested too deep');
    this.offsets.set(path, this.at);
    if (this.takes('{')) return this.object(path, depth);
    if (this.takes('[')) return this.array(path, depth);
    return this.scalar();
  }

  private scalar(): unknown {
    scalar.lastIndex = this.at;
    const [found] = scalar.exec(this.text) ?? [];
    if (found === undefined)
      throw this.fault(this.at < this.text.length ? 'not a JSON value' : 'the text ends too soon');
    try {
      const value: unknown = JSON.parse(found);
      this.at += found.length;
      return value;
    } catch {
      throw this.fault(`${found.slice(0, 40)} is not a JSON value`);
    }
  }

  private object(path: string, depth: number): unknown {
    const entries: [string, unknown][] = [];
    if (this.takes('}')) return {};
    do {
      this.skip();
      if (this.text[this.at] !== '"') throw this.fault('expected a name in double quotes');
      const start = this.at;
      const name = String(this.scalar());
      this.names.set(`${path}/${name}`, start);
      if (!this.takes(':')) throw this.fault('expected ":"');
      entries.push([name, this.value(`${path}/${name}`, depth + 1)]);
    } while (this.takes(','));
    if (!this.takes('}')) throw this.fault('expected "," or "}"');
    return Object.fromEntries(entries);
  }

  private array(path: string, depth: number): unknown {
    const values: unknown[] = [];
    if (this.takes(']')) return values;
    do values.push(this.value(`${path}/${values.length}`, depth + 1));
    while (this.takes(','));
    if (!this.takes(']')) throw this.fault('expected "," or "]"');
    return values;
  }
}

/** Reads a JSON text. @throws JsonFault with the place of the first fault */
export function readPlacedJson(text: string): PlacedJson {
  const reader = new Reader(text);
  return { value: reader.whole(), offsets: reader.offsets, names: reader.names };
}
