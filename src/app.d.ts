import type { App as Ridgelarder } from '$lib/server/app';

declare global {
  namespace App {
    interface Locals {
      app: Ridgelarder;
      /** The request came in where pages can only be read. */
      readsOnly: boolean;
    }
  }
}
