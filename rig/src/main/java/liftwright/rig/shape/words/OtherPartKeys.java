package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;

/** The section {@code other parts}: whatever else has mass. */
public final class OtherPartKeys {

    public static final Key<String> ID = required("id", new Ident(), "Name of the part.", "frame");
    public static final Key<Quantity> MASS =
            required("mass", Amount.positive(Measure.MASS), "Its mass.", "5.8 kg ± 2 %");
    public static final Key<List<Stated<Quantity>>> BOX =
            open(
                            "box",
                            new ListOf<>(
                                    "edges: forward, right, up",
                                    Amount.positive(Measure.LENGTH),
                                    3,
                                    3),
                            "Edges forward, right and up.",
                            "[420 mm, 90 mm, 520 mm]",
                            "a point")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Fields> AT =
            required(
                    "at",
                    PlaceKeys.CARRIED,
                    "What carries it, and where its middle is.",
                    "{mount: back, up: 40 mm}");
    public static final Key<String> TWIN =
            open(
                    "twin",
                    new Ident(),
                    "Name of a mirrored part on the other side.",
                    "right pod shell",
                    "there is none");
    public static final Key<String> SERIAL =
            later("serial", new Text("a serial number"), "Its serial number.", "0417");
    public static final Key<Quantity> DRAG_AREA =
            later("drag area", Amount.positive(Measure.AREA), "Drag area.", "600 cm²");
    public static final Key<String> NOTE =
            open("note", new Text("a note"), "For people only.", "weighed in spring", "none");
    public static final Section SECTION =
            Section.of(
                    "other part",
                    "Anything else that has mass.",
                    ID,
                    MASS,
                    BOX,
                    AT,
                    TWIN,
                    SERIAL,
                    DRAG_AREA,
                    NOTE);

    private OtherPartKeys() {}
}
