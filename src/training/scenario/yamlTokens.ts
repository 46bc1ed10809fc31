import { CST, Lexer } from 'yaml';

/** No honest scenario is nested half as deep. */
export const DEEPEST = 24;

export interface TokenTrouble {
  readonly code: 'nested-too-deep' | 'directive-not-allowed' | 'brackets-closed';
  readonly offset: number;
}

/** Tokens that stand for no text of the file. */
const MARKS: readonly string[] = [CST.DOCUMENT, CST.FLOW_END, CST.SCALAR];

/**
 * What must be refused before a tree is built: the parser walks nested collections by recursion, and a stack that runs
 * out inside it can end the whole program. The tokens are read one after the other, however deep they lie.
 */
export function tokenTrouble(text: string): TokenTrouble | null {
  /** Columns at which the block collections around the present token begin. */
  let columns: number[] = [];
  let flow = 0;
  let closedTooOften = 0;
  /** Values on this line: `a: b: c:` nests without a new column. */
  let values = 0;
  let offset = 0;
  let column = 0;
  let fresh = true;
  for (const token of new Lexer().lex(text)) {
    if (MARKS.includes(token)) continue;
    const type = CST.tokenType(token);
    switch (type) {
      case 'newline':
        fresh = true;
        values = 0;
        break;
      case 'space':
      case 'comment':
      case 'byte-order-mark':
        break;
      case 'directive-line':
        return { code: 'directive-not-allowed', offset };
      case 'flow-map-start':
      case 'flow-seq-start':
        flow++;
        break;
      case 'flow-map-end':
      case 'flow-seq-end':
        if (flow > 0) flow--;
        else closedTooOften++;
        // The parser would take the longer over each, the more there are.
        if (closedTooOften > DEEPEST) return { code: 'brackets-closed', offset };
        break;
      case 'map-value-ind':
        if (flow === 0) values++;
        break;
      default:
        break;
    }
    if (flow === 0 && type !== 'newline' && type !== 'space' && type !== 'comment') {
      const indicator = type === 'seq-item-ind' || type === 'explicit-key-ind';
      if (fresh) columns = columns.filter((each) => each < column);
      if (fresh || indicator) columns.push(column);
      fresh = false;
    }
    if (columns.length + flow + values > DEEPEST) return { code: 'nested-too-deep', offset };
    offset += token.length;
    const lineEnd = token.lastIndexOf('\n');
    column = lineEnd < 0 ? column + token.length : token.length - lineEnd - 1;
  }
  return null;
}
