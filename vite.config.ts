import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vite';
import { noteClientChunks } from './src/tooling/client-chunks.ts';

export default defineConfig({ plugins: [sveltekit(), noteClientChunks()] });
