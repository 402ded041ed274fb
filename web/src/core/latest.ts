/**
 * Hands on the latest of many values, one at a time: while one is being dealt with, newer ones
 * replace each other, and the last of them follows.
 */
export class Latest<T> {
    private busy = false;
    private waiting: { value: T } | undefined;

    constructor(private readonly deal: (value: T) => void | Promise<void>) {}

    offer(value: T): void {
        if (this.busy) {
            this.waiting = { value };
            return;
        }
        this.go(value);
    }

    /** Forgets what waits. What is being dealt with is not stopped. */
    drop(): void {
        this.waiting = undefined;
    }

    private go(value: T): void {
        const dealt = this.deal(value);
        if (!(dealt instanceof Promise)) {
            return;
        }
        this.busy = true;
        const next = (): void => {
            this.busy = false;
            const waiting = this.waiting;
            this.waiting = undefined;
            if (waiting) {
                this.go(waiting.value);
            }
        };
        dealt.then(next, next); // whoever deals with it tells what went wrong
    }
}
