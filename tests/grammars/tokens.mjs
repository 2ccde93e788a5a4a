// The scopes of lines by a TextMate grammar, as editors find them: {grammar, lines} comes in as JSON, for each line go
// out its tokens: [start, end, scopes].
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const require = createRequire(new URL("../outside/web/package.json", import.meta.url));
const oniguruma = require("vscode-oniguruma");
const textmate = require("vscode-textmate");

const asked = JSON.parse(readFileSync(0, "utf8"));
await oniguruma.loadWASM(readFileSync(require.resolve("vscode-oniguruma/release/onig.wasm")).buffer);
const registry = new textmate.Registry({
  onigLib: Promise.resolve({
    createOnigScanner: (sources) => new oniguruma.OnigScanner(sources),
    createOnigString: (text) => new oniguruma.OnigString(text),
  }),
  loadGrammar: async () => textmate.parseRawGrammar(JSON.stringify(asked.grammar), "blockdsl.json"),
});
const grammar = await registry.loadGrammar("source.blockdsl");
let state = textmate.INITIAL;
const told = asked.lines.map((line) => {
  const found = grammar.tokenizeLine(line, state);
  state = found.ruleStack;
  return found.tokens.map((token) => [token.startIndex, token.endIndex, token.scopes]);
});
process.stdout.write(JSON.stringify(told));
