/** Source files whose test stands under another name, because both are one behaviour. */
export const coveredBy: Readonly<Record<string, string>> = {
  "src/cases/cancelled.ts": "tests/cases/postman.test.ts",
  "src/cases/delivery.ts": "tests/cases/postman.test.ts",
  "src/cases/move-chat.ts": "tests/cases/postman.test.ts",
  "src/cases/settle.ts": "tests/cases/postman.test.ts",
  "src/domain/case-state.ts": "tests/domain/fold-case.test.ts",
  "src/domain/fold-questions.ts": "tests/domain/fold-case.test.ts",
  "src/domain/fold-told.ts": "tests/domain/fold-case.test.ts",
  "src/domain/fold-visit.ts": "tests/domain/fold-case.test.ts",
};
