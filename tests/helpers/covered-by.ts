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
  "src/knowledge/locale-compare.ts": "tests/knowledge/locale-check.test.ts",
  "src/knowledge/locale-limits.ts": "tests/knowledge/locale-check.test.ts",
  "src/paper/bundled-fonts.ts": "tests/paper/font.test.ts",
  "src/paper/png.ts": "tests/paper/causes-picture.test.ts",
  "src/wording/language-pack.ts": "tests/wording/wording.test.ts",
  "src/wording/moments.ts": "tests/wording/wording.test.ts",
  "src/wording/speaker.ts": "tests/wording/wording.test.ts",
  "src/wording/trouble.ts": "tests/wording/wording.test.ts",
};
