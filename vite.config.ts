import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vite';
import { noteClientChunks } from './src/tooling/client-chunks.ts';
import { pageTexts } from './src/tooling/page-texts.ts';

export default defineConfig({ plugins: [sveltekit(), noteClientChunks(), pageTexts()] });
