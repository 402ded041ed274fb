package liftwright.rig.shape;

import java.util.Optional;
import liftwright.rig.Declaration;
import liftwright.rig.Problem.Code;
import liftwright.rig.Rig;
import liftwright.rig.csv.Beside;
import liftwright.rig.shape.bind.Shelf;
import liftwright.rig.shape.bind.WholeRig;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.words.RigKeys;
import liftwright.rig.text.Declarations;
import liftwright.rig.text.Node;

/** Reads the tree of a rig file into a rig, or into everything that is wrong with it. */
public final class RigReader {

    private RigReader() {}

    /**
     * Reads a whole file without its tables: that it names one is then a problem.
     *
     * @param fileName as problems shall call it
     * @param root the file as a tree with places
     */
    public static Read read(String fileName, Node root) {
        return read(fileName, root, Shelf.beside(fileName, Beside.NOTHING));
    }

    /**
     * Reads a whole file.
     *
     * @param fileName as problems shall call it
     * @param root the file as a tree with places
     * @param shelf gives the tables that it names
     */
    public static Read read(String fileName, Node root, Shelf shelf) {
        return read(fileName, root, Declarations.of(root), shelf);
    }

    static Read read(String fileName, Node root, Declaration declaration, Shelf shelf) {
        var problems = new Problems(fileName, Shape::homesOf);
        Spot top = Spot.top(root.span());
        if (isOfAnotherFormat(root, top, problems)) {
            return new Read(Optional.empty(), problems.inOrder());
        }
        Optional<Fields> file = RigKeys.SECTION.read(root, top, problems);
        Optional<Rig> rig = file.flatMap(f -> WholeRig.bind(f, declaration, shelf, problems));
        return new Read(rig, problems.inOrder());
    }

    /** A file of a later format would give problems that are none: only its version is one. */
    private static boolean isOfAnotherFormat(Node root, Spot top, Problems problems) {
        if (!(root instanceof Node.Entries map)
                || !(map.value(RigKeys.LIFTWRIGHT.name()).orElse(null)
                        instanceof Node.Scalar version)) {
            return false;
        }
        Spot spot = top.child(RigKeys.LIFTWRIGHT.name(), version.span());
        var own = new Problems("");
        Optional<Integer> number = RigKeys.LIFTWRIGHT.kind().read(version, spot, own);
        if (number.isEmpty() || number.get() == RigKeys.FORMAT) {
            return false;
        }
        problems.add(
                Code.UNSUPPORTED_VERSION,
                spot,
                "format " + number.get(),
                "format " + RigKeys.FORMAT,
                "A newer Liftwright wrote or expects this file: use that one.");
        return true;
    }
}
