import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { keptOffline } from './src/cli/offlineWorker';
import { groupOf, type Terms, type TextGroup } from './src/text/catalogues';
import { COMPILED } from './src/text/compiled';

/**
 * Nothing but the app's own files may be loaded, and nothing may be sent anywhere: a job never
 * leaves the browser. Written once; served as a header here, and built into the page for a host
 * that sends no headers of its own.
 */
const POLICY: readonly string[] = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "object-src 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types pitchboard-offline pitchboard-workshop',
];

/** Browsers refuse this one in a meta tag, with a complaint on the console. */
const HEADER_ONLY = "frame-ancestors 'none'";

const HEADERS = {
  'Content-Security-Policy': [...POLICY, HEADER_ONLY].join('; '),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=()',
};

/** At build time only: the dev server needs inline scripts to swap modules in the running page. */
function policyInPage(): Plugin {
  return {
    name: 'policy-in-page',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY.join('; ') },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/**
 * At build time only: the page gets its texts with values and plurals already parsed, and each group
 * of texts in the piece of the program that needs it.
 */
function textsCompiled(): Plugin {
  const ofGroup = (terms: Terms, group: TextGroup) =>
    Object.fromEntries(Object.entries(COMPILED[terms]).filter(([key]) => groupOf(key) === group));
  const late = (texts: Readonly<Record<Terms, object>>) =>
    `import { addTexts } from './say';\naddTexts(${JSON.stringify(texts)});`;
  const lateGroup = (group: TextGroup) => late({ us: ofGroup('us', group), uk: ofGroup('uk', group) });
  return {
    name: 'texts-compiled',
    apply: 'build',
    load(id) {
      const page = ofGroup('us', 'page');
      if (id.endsWith('/src/text/compiled.ts'))
        return `export const COMPILED = ${JSON.stringify({ us: page, uk: {} })};`;
      if (id.endsWith('/src/text/lateUk.ts')) return late({ us: {}, uk: ofGroup('uk', 'page') });
      if (id.endsWith('/src/text/lateSoon.ts')) return lateGroup('soon');
      if (id.endsWith('/src/text/lateFigures.ts')) return lateGroup('figures');
      if (id.endsWith('/src/text/lateFindings.ts')) return lateGroup('findings');
      if (id.endsWith('/src/text/latePaper.ts')) return lateGroup('paper');
      if (id.endsWith('/src/text/lateCarry.ts')) return lateGroup('carry');
      if (id.endsWith('/src/text/lateSearch.ts')) return lateGroup('search');
      return null;
    },
  };
}

/** What the writer of PDF files fetches for pictures and web pages, which no sheet has. */
const NOT_NEEDED = ['html2canvas', 'dompurify', 'canvg'];

/** At build time only: nobody is handed programs that nothing here can call. */
function withoutUnused(): Plugin {
  return {
    name: 'without-unused',
    apply: 'build',
    enforce: 'pre',
    resolveId: (id) => (NOT_NEEDED.includes(id) ? `\0${id}` : null),
    load: (id) => (NOT_NEEDED.some((name) => id === `\0${name}`) ? 'export default null;' : null),
  };
}

export default defineConfig({
  // Relative addresses, so that the built folder works under any path of any host.
  base: './',
  plugins: [react(), policyInPage(), textsCompiled(), withoutUnused(), keptOffline()],
  // The workshop's own pieces: the same texts and the same omissions as the page's.
  worker: { format: 'es', plugins: () => [textsCompiled(), withoutUnused()] },
  build: {
    outDir: 'dist',
    target: 'es2022',
    // A data: address would need a hole in the policy.
    assetsInlineLimit: 0,
    // Every browser that the app runs in knows modulepreload.
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    // What the first page always needs comes in one piece: it packs smaller than a dozen.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'page', tags: ['$initial'] }] } } },
  },
  preview: { headers: HEADERS, cors: false },
});
