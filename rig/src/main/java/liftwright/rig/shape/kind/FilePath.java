package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A file beside the rig file or below it.
 *
 * @param what what the file holds, with article
 * @param ending how its name ends
 */
public record FilePath(String what, String ending) implements Kind<String> {

    @Override
    public Optional<String> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String path = text.get();
        if (!inside(path)) {
            problems.add(
                    Code.OUTSIDE_FOLDER,
                    spot,
                    Problems.quote(path),
                    "a path that stays inside the folder of the rig file",
                    "Copy the file beside the rig file and write its name.");
            return Optional.empty();
        }
        if (!path.endsWith(ending)) {
            problems.add(Code.WRONG_KIND, spot, Problems.quote(path), expectation(), "");
            return Optional.empty();
        }
        return text;
    }

    /**
     * Backslashes and colons are refused everywhere, so that a file means the same on any system.
     */
    private static boolean inside(String path) {
        for (int i = 0; i < path.length(); i++) {
            char c = path.charAt(i);
            if (c == '\\' || c == ':' || Character.isISOControl(c)) {
                return false;
            }
        }
        int from = 0;
        while (from <= path.length()) {
            int slash = path.indexOf('/', from);
            int to = slash < 0 ? path.length() : slash;
            String step = path.substring(from, to);
            if (step.isEmpty() || step.equals("..") || step.equals(".") || step.startsWith("~")) {
                return false;
            }
            from = to + 1;
        }
        return true;
    }

    @Override
    public String expectation() {
        return "the name of " + what + " beside the rig file, ending in " + ending;
    }
}
