import { defineConfig } from '@playwright/test';
import usual from './playwright.config.ts';

/** What takes minutes: it starts its own product, cuts it off and kills it. */
export default defineConfig(usual, { testDir: 'long', testMatch: '*.spec.ts', globalSetup: [], workers: 1 });
