/** Source files whose test stands under another name, because both are one behaviour. */
export const coveredBy: Readonly<Record<string, string>> = {
  "src/domain/case-state.ts": "tests/domain/fold-case.test.ts",
  "src/domain/fold-questions.ts": "tests/domain/fold-case.test.ts",
  "src/domain/fold-told.ts": "tests/domain/fold-case.test.ts",
  "src/domain/fold-visit.ts": "tests/domain/fold-case.test.ts",
};
