import js from "@eslint/js";
import tseslint from "typescript-eslint";

/** Node and the DOM have no business in the core: it receives clocks, randomness and bytes as arguments. */
const CORE_GLOBALS = ["window", "document", "navigator", "process", "Buffer", "fetch", "localStorage", "setTimeout", "performance"];

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**", ".cache/**", "test-results/**", "playwright-report/**", ".dependency-cruiser.cjs"] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    rules: {
      // Ranges of control characters stand in patterns on purpose: they are what a line of text may not hold.
      "no-control-regex": "off",
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/ban-ts-comment": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
      "no-console": "off",
      eqeqeq: "error",
    },
  },
  {
    files: ["shared/**/*.ts"],
    rules: {
      "no-restricted-globals": ["error", ...CORE_GLOBALS],
      "no-restricted-properties": [
        "error",
        { object: "Date", property: "now", message: "The core has no clock: take `now` as an argument." },
        { object: "Math", property: "random", message: "The core has no randomness: take it as an argument." },
      ],
      "no-restricted-syntax": [
        "error",
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: "The core has no clock: take `now` as an argument." },
      ],
    },
  },
  {
    files: ["**/*.mjs", "**/*.js"],
    languageOptions: { globals: { process: "readonly", console: "readonly", URL: "readonly", setTimeout: "readonly", clearTimeout: "readonly", fetch: "readonly", Buffer: "readonly" } },
  },
  { files: ["tests/pictures/*.mjs"], languageOptions: { globals: { document: "readonly" } } },
  {
    files: ["electron/**/*.ts"],
    ignores: ["electron/bridge-host.ts", "electron/preload.ts"],
    rules: {
      "no-restricted-imports": ["error", { paths: [{ name: "electron", importNames: ["ipcMain", "ipcRenderer"], message: "Only bridge-host.ts and preload.ts speak IPC." }] }],
    },
  },
);
