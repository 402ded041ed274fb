import {
    chromium,
    type Browser,
    type BrowserContext,
    type BrowserContextOptions,
    type Page,
} from 'playwright-core';
import { inject } from 'vitest';

/** How somebody looks at the page. */
export interface Look {
    width: number;
    height: number;
    theme?: 'light' | 'dark';
    forcedColours?: boolean;
    reducedMotion?: boolean;
}

export const desk: Look = { width: 1280, height: 720 };

/** A page under watch: what goes wrong on it is collected, whoever notices. */
export class Visit {
    readonly complaints: string[] = [];
    // A software renderer says that reading a picture back waits for it.
    private forgiven: RegExp[] = [/GL Driver Message .*ReadPixels/];

    private constructor(
        readonly context: BrowserContext,
        readonly page: Page,
    ) {}

    static async of(browser: Browser, link: string, look: Look = desk): Promise<Visit> {
        const context = await browser.newContext(options(look));
        const page = await context.newPage();
        page.setDefaultTimeout(15_000);
        const visit = new Visit(context, page);
        visit.watch();
        await page.goto(link);
        return visit;
    }

    private watch(): void {
        this.page.on('console', message => {
            if (message.type() === 'error' || message.type() === 'warning') {
                this.note(`console ${message.type()}: ${message.text()}`);
            }
        });
        this.page.on('pageerror', error => {
            this.note(`uncaught: ${error.stack ?? error.message}`);
        });
        this.page.on('requestfailed', request => {
            const why = request.failure()?.errorText ?? 'unknown';
            // A stream that the page itself closed is no failure.
            if (why !== 'net::ERR_ABORTED') {
                this.note(`failed: ${request.method()} ${request.url()}: ${why}`);
            }
        });
        this.page.on('response', response => {
            if (response.status() >= 400) {
                this.note(`answered ${response.status()}: ${response.url()}`);
            }
        });
    }

    private note(what: string): void {
        if (!this.forgiven.some(pattern => pattern.test(what))) {
            this.complaints.push(what);
        }
    }

    /** From here on a complaint like this is part of the scenario. */
    forgive(pattern: RegExp): void {
        this.forgiven.push(pattern);
    }

    async close(): Promise<void> {
        await this.context.close();
    }
}

function options(look: Look): BrowserContextOptions {
    return {
        viewport: { width: look.width, height: look.height },
        colorScheme: look.theme ?? 'light',
        forcedColors: look.forcedColours === true ? 'active' : 'none',
        reducedMotion: look.reducedMotion === true ? 'reduce' : 'no-preference',
        acceptDownloads: true,
        locale: 'en-GB',
    };
}

let connected: Promise<Browser> | undefined;

/** The one Chromium of this run. */
export function browser(): Promise<Browser> {
    connected ??= chromium.connect(inject('chromium'));
    return connected;
}
