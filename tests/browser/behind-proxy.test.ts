/* Behind a proxy with TLS, which phones need before they keep pages: requests come in under the proxy's name. */
import { spawnSync } from 'node:child_process';
import { request, type IncomingHttpHeaders } from 'node:http';
import { expect, test } from 'vitest';
import { newDemoTrip, projectFile, startApp } from './harness.ts';

const PROXY = 'https://larder.example';
const app = startApp({ RIDGELARDER_ORIGIN: PROXY });

/** Asks as a proxy does, which passes on the name that it was asked under. @returns the status */
function ask(host: string, path: string, post?: { readonly origin: string; readonly type: string }) {
  return new Promise<number | undefined>((resolve, reject) => {
    const headers = { host, ...(post && { origin: post.origin, 'content-type': post.type }) };
    request(app.origin + path, { method: post ? 'POST' : 'GET', headers, agent: false }, (response) => {
      response.resume();
      resolve(response.statusCode);
    })
      .on('error', reject)
      .end(post?.type === 'application/json' ? '{"notes":[]}' : '');
  });
}

const FORM = 'application/x-www-form-urlencoded';

test('pages are read and forms and notes are taken under the name of the proxy and under the own address', async () => {
  const trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
  const own = new URL(app.origin).host;
  for (const [host, origin] of [
    ['larder.example', PROXY],
    [own, app.origin],
  ] as const) {
    expect(await ask(host, '/shelf')).toBe(200);
    expect(await ask(host, `${trip}/notes.json`, { origin, type: 'application/json' })).toBe(200);
    expect(await ask(host, '/demo', { origin, type: FORM })).toBe(200);
    for (const type of [FORM, 'application/json'])
      expect(await ask(host, `${trip}/notes.json`, { origin: 'https://elsewhere.example', type })).toBe(403);
  }
  expect(await ask('elsewhere.example', '/shelf')).toBe(421);
});

test.each(['http://larder.example', 'https://larder.example/', 'larder'])(
  '%s is refused with words',
  (origin) => {
    const { status, stderr } = spawnSync(process.execPath, [projectFile('src/tooling/start.ts')], {
      cwd: projectFile(),
      env: { ...process.env, PORT: '0', RIDGELARDER_ORIGIN: origin },
      encoding: 'utf8',
    });
    expect(status).toBe(1);
    expect(stderr).toContain(`RIDGELARDER_ORIGIN is "${origin}"`);
  },
);

test('with a passphrase, the proxy passes on a cookie that is held to TLS, and each address behind it is counted by itself', async () => {
  const { status } = spawnSync(process.execPath, [projectFile('src/tooling/passphrase.ts')], {
    env: { ...process.env, RIDGELARDER_DATA: app.dataFolder },
    input: 'walnut ladder seven fog\n',
  });
  expect(status).toBe(0);
  const signIn = (passphrase: string, from: string) =>
    new Promise<{ status: number | undefined; headers: IncomingHttpHeaders }>((resolve, reject) => {
      const headers = {
        host: 'larder.example',
        origin: PROXY,
        'content-type': FORM,
        accept: 'text/html',
        'x-forwarded-for': from,
      };
      // On a connection of its own: the server may have closed one that waited.
      request(`${app.origin}/sign-in?/in`, { method: 'POST', headers, agent: false }, (response) => {
        response.resume();
        resolve({ status: response.statusCode, headers: response.headers });
      })
        .on('error', reject)
        .end(new URLSearchParams({ passphrase }).toString());
    });
  const { headers } = await signIn('walnut ladder seven fog', '192.0.2.1');
  expect(headers['set-cookie']?.[0]).toMatch(
    /^__Host-ridgelarder-access=[\w-]{43}; Max-Age=\d+; Path=\/; HttpOnly; Secure; SameSite=Lax$/i,
  );
  expect(headers['strict-transport-security']).toBe('max-age=31536000');

  // What a sender claims about itself stands before what the proxy adds.
  for (let wrong = 0; wrong < 5; wrong += 1)
    expect((await signIn('wrong', `203.0.113.${wrong}, 192.0.2.66`)).status).toBe(403);
  expect((await signIn('wrong', '203.0.113.9, 192.0.2.66')).status).toBe(429);
  expect((await signIn('walnut ladder seven fog', '192.0.2.1')).status).toBe(303);
});
