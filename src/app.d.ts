import type { App as Ridgelarder } from '$lib/server/app';

declare global {
  namespace App {
    interface Locals {
      app: Ridgelarder;
    }
  }
}
