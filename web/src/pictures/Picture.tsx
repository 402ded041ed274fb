import { useMemo } from 'preact/hooks';
import { numbersOf } from '../core/numbers';
import { ledgerOf } from '../core/rows';
import type { Table } from '../core/wire';
import type { PictureProps } from './api';
import { CardPicture } from './CardPicture';
import { CasesPicture } from './CasesPicture';
import { CurvePicture } from './CurvePicture';
import { ElevationPicture } from './ElevationPicture';
import { LedgerPicture } from './LedgerPicture';
import { MatrixPicture } from './MatrixPicture';
import { PlaybackPicture } from './PlaybackPicture';
import { RigViews } from './RigViews';
import { SharesPicture } from './SharesPicture';
import { StripsPicture } from './strips/StripsPicture';
import { TablePicture } from './TablePicture';
import { TimelinePicture } from './TimelinePicture';
import { WaterfallPicture } from './WaterfallPicture';

/** A section of an answer as picture, with its numbers as a table one key away. */
export function Picture(props: PictureProps) {
    const { section } = props;
    switch (section.kind) {
        case 'waterfall':
            return <WaterfallPicture {...props} section={section} />;
        case 'plot':
            return <CurvePicture {...props} section={section} />;
        case 'drawing':
            return <RigViews {...props} drawing={section} parts={[]} onDrag={noDrag} />;
        case 'timeline':
            return <TimelinePicture {...props} section={section} />;
        case 'shares':
            return <SharesPicture {...props} section={section} />;
        case 'playback':
            return <PlaybackPicture {...props} section={section} />;
        case 'matrix':
            return <MatrixPicture {...props} section={section} />;
        case 'cases':
            return <CasesPicture {...props} section={section} />;
        case 'elevation':
            return <ElevationPicture {...props} section={section} />;
        case 'strips':
            return <StripsPicture {...props} section={section} />;
        case 'card':
            return <CardPicture {...props} section={section} />;
        case 'table':
            return <LedgerOrTable {...props} section={section} />;
    }
}

function LedgerOrTable(props: PictureProps & { section: Table }) {
    const { section, fields } = props;
    const ledger = useMemo(() => ledgerOf(section), [section]);
    const tables = useMemo(() => numbersOf(section, fields), [section, fields]);
    return ledger ? (
        <LedgerPicture {...props} section={section} ledger={ledger} />
    ) : (
        <TablePicture {...props} tables={tables} />
    );
}

function noDrag(): void {
    // a drawing that is only looked at
}
