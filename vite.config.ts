import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
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
  "trusted-types 'none'",
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

/** At build time only: the page gets its texts with values and plurals already parsed. */
function textsCompiled(): Plugin {
  return {
    name: 'texts-compiled',
    apply: 'build',
    load: (id) =>
      id.endsWith('/src/text/compiled.ts') ? `export const COMPILED = ${JSON.stringify(COMPILED)};` : null,
  };
}

export default defineConfig({
  // Relative addresses, so that the built folder works under any path of any host.
  base: './',
  plugins: [react(), policyInPage(), textsCompiled()],
  build: {
    outDir: 'dist',
    target: 'es2022',
    // A data: address would need a hole in the policy.
    assetsInlineLimit: 0,
    // Every browser that the app runs in knows modulepreload.
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
  },
  preview: { headers: HEADERS, cors: false },
});
