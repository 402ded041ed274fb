/** Cuts a stream of text into its lines; the last one may lack its end. */
export class Lines {
    private rest = '';

    /** The lines that are whole now. */
    push(chunk: string): string[] {
        const pieces = (this.rest + chunk).split('\n');
        this.rest = pieces.pop() ?? '';
        return pieces.filter(line => line.trim() !== '');
    }

    /** What came without the end of a line: a stream that was cut leaves half an object here. */
    end(): string {
        const rest = this.rest;
        this.rest = '';
        return rest;
    }
}
