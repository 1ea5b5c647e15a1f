import type { IncomingMessage } from 'node:http';
import type { Reasons } from '$lib/reasons/reason';
import type { ReadLink } from '$lib/server/access/read-link-repository';
import type { UserError } from '$lib/server/errors';
import type { Session } from '$lib/server/access/session-repository';
import type { App as Ridgelarder } from '$lib/server/app';

declare global {
  /** A body that streams needs it (Fetch standard); the types of the DOM do not have it yet. */
  interface RequestInit {
    duplex?: 'half';
  }

  namespace App {
    interface PageData {
      /** Why the values of the page's forms stand where nobody entered one, and what its figures take for granted. */
      reasons?: Reasons | undefined;
    }
    /** What the server below the app hands on (adapter-node). */
    interface Platform {
      req: IncomingMessage;
    }
    interface Locals {
      app: Ridgelarder;
      /** Whoever asks can only read: at the address for readers, by a link, or without having signed in. */
      readsOnly: boolean;
      /** What was thrown for the user, and where nothing of the page was answered for it. */
      failed?: UserError | undefined;
      /** The form that was sent. */
      sent?: FormData | undefined;
      /** The device is signed in. */
      session?: Session | undefined;
      /** The link that whoever asks came by. */
      link?: ReadLink | undefined;
    }
  }
}
