import { useBay } from './context';
import { LinkField } from './Bars';

/** Without a key nothing is shown. */
export function Doorstep() {
    const bay = useBay();
    return (
        <main id="sheet" class="sheet doorstep" tabIndex={-1}>
            <h2>The door is shut</h2>
            <p role="status">{bay.gate.sentence.value}</p>
            <p>Run this in a shell and open the link that it prints, or paste it here:</p>
            <pre>liftwright open</pre>
            <LinkField />
        </main>
    );
}
