package liftwright.rig.text;

import liftwright.rig.Problem;

/** A problem whose place is still an offset, UTF-16 units. */
record Located(
        Problem.Code code, int offset, String path, String found, String expected, String advice) {

    Problem in(String file, Lines lines) {
        var at = lines.span(offset, offset);
        return new Problem(
                code,
                new Problem.Place(file, at.line(), at.column(), path),
                found,
                expected,
                advice);
    }
}
