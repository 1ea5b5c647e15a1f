/** So long browsers keep to TLS once they came that way, s: a year, as OWASP ASVS 5.0 (3.4.1) asks. */
const TLS_FOR_S = 365 * 86_400;

/** For what is no page; pages state a stricter policy of their own (svelte.config.js). */
const POLICY = [
  "default-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
  "object-src 'none'",
].join('; ');

const ALWAYS = {
  'content-security-policy': POLICY,
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy':
    'accelerometer=(), camera=(), display-capture=(), geolocation=(), gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), serial=(), usb=()',
  // Forms state their origin only where a referrer may be sent to it.
  'referrer-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
} as const;

/** @returns headers that every response bears. @param origin that was asked; `undefined` where it was none of ours */
export function securityHeaders(origin: string | undefined): Readonly<Record<string, string>> {
  return origin?.startsWith('https:')
    ? { ...ALWAYS, 'strict-transport-security': `max-age=${TLS_FOR_S}` }
    : ALWAYS;
}
