package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.climbwright.path.ClimbState;

/** Gathers what to expect and what to do in any order, and gives it out as it is due. */
final class ExpectationCollector {
    private final List<Expectation> found = new ArrayList<>();

    void add(Expectation.Kind kind, String what, ClimbState at, String figure, String reason) {
        add(kind, what, at, Optional.empty(), figure, reason);
    }

    void add(
            Expectation.Kind kind,
            String what,
            ClimbState at,
            Optional<ClimbState> latest,
            String figure,
            String reason) {
        found.add(new Expectation(0, kind, what, at, latest, figure, reason));
    }

    /** Numbered from 1. */
    List<Expectation> inOrder() {
        List<Expectation> numbered = new ArrayList<>();
        found.stream()
                .sorted(Comparator.comparingDouble(one -> one.due().timeS()))
                .forEach(one -> numbered.add(one.numbered(numbered.size() + 1)));
        return List.copyOf(numbered);
    }
}
