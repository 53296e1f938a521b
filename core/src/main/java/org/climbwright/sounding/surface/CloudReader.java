package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.climbwright.quantity.altitude.Height;
import org.jspecify.annotations.Nullable;

/**
 * Cloud: layers, vertical visibility, or a statement that there is none of some kind.
 *
 * <p>Better a cloud too many than none: a statement of no cloud falls where cloud is told, or where
 * a group of cloud cannot be read. Each layer is a group of its own, so one behind slashes stays.
 */
final class CloudReader implements GroupReader {
    private static final Map<String, Sky> STATEMENTS =
            Map.of(
                    "CAVOK", Sky.CAVOK,
                    "SKC", Sky.SKY_CLEAR,
                    "CLR", Sky.CLEAR_BELOW_12000_FEET,
                    "NSC", Sky.NO_SIGNIFICANT_CLOUD,
                    "NCD", Sky.NO_CLOUD_DETECTED);

    private static final Pattern LAYER =
            Pattern.compile("(FEW|SCT|BKN|OVC).*|///(\\d{3}.*|(///)?(CB|TCU))");
    private static final Pattern MISSING = Pattern.compile("/{6}|/{8,9}");
    private static final Pattern UPWARDS = Pattern.compile("VV.*");
    private static final Pattern UPWARDS_TOLD = Pattern.compile("VV(\\d{3}|///)");

    private final Notes notes;
    private final OtherReader others;
    private final List<CloudLayer> layers = new ArrayList<>();
    private @Nullable Group statement;
    private boolean obscured;
    private boolean doubtful;
    private @Nullable Height verticalVisibility;

    CloudReader(Notes notes, OtherReader others) {
        this.notes = notes;
        this.others = others;
    }

    List<CloudLayer> layers() {
        return layers;
    }

    @Nullable Height verticalVisibility() {
        return verticalVisibility;
    }

    Sky sky() {
        if (obscured) {
            return Sky.OBSCURED;
        }
        if (!layers.isEmpty()) {
            return Sky.LAYERS;
        }
        return statement == null
                ? Sky.NOT_REPORTED
                : STATEMENTS.getOrDefault(statement.text(), Sky.NOT_REPORTED);
    }

    @Override
    public boolean take(Group group) {
        if (group.matches(MISSING)) {
            takeMissing(group);
        } else if (STATEMENTS.containsKey(group.text())) {
            takeStatement(group);
        } else if (group.matches(UPWARDS)) {
            takeVerticalVisibility(group);
        } else if (group.matches(LAYER)) {
            takeLayer(group);
        } else {
            return false;
        }
        return true;
    }

    private void takeMissing(Group group) {
        if (sky() == Sky.NOT_REPORTED) {
            notes.reportedMissing(ReportElement.CLOUD, group);
        } else {
            others.keep(group);
        }
    }

    private void takeStatement(Group group) {
        if (doubtful || sky() != Sky.NOT_REPORTED || notes.isReportedMissing(ReportElement.CLOUD)) {
            notes.leftOut("cloud", group, "something else is told of the sky; left out");
        } else {
            statement = group;
        }
    }

    private void takeLayer(Group group) {
        CloudLayer layer = notes.legible(ReportElement.CLOUD, group, CloudLayer::parse);
        if (layer == null) {
            doubtful = true;
        } else {
            layers.add(layer);
        }
        cloudIsTold();
    }

    private void takeVerticalVisibility(Group group) {
        if (!group.matches(UPWARDS_TOLD)) {
            notes.notUsable(
                    group,
                    "not a vertical visibility",
                    ReportElement.VERTICAL_VISIBILITY,
                    ReportElement.CLOUD);
            doubtful = true;
            cloudIsTold();
        } else if (!notes.isSettled(ReportElement.VERTICAL_VISIBILITY, verticalVisibility, group)) {
            verticalVisibility = CloudLayer.base(group.text().substring(2));
            obscured = true;
            cloudIsTold();
            if (verticalVisibility == null) {
                notes.reportedMissing(ReportElement.VERTICAL_VISIBILITY, group);
            }
        }
    }

    /** A CAVOK that its visibility contradicts: nothing is known of the sky. */
    void doubt(Group cavok) {
        notes.notUsable(cavok, "contradicted by the visibility beside it", ReportElement.CLOUD);
        statement = null;
        doubtful = true;
    }

    /** Who told of no cloud before was wrong: better a cloud too many. */
    private void cloudIsTold() {
        if (statement != null) {
            notes.leftOut("cloud", statement, "contradicts the cloud behind it; left out");
            statement = null;
        }
    }
}
