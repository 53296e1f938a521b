package org.climbwright.gradient.cloudtop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.gradient.cloudtop.CloudTop.Answer;
import org.climbwright.gradient.cloudtop.CloudTop.AtNearEdge;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Scene;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A climb over the top of a cloud")
class CloudTopTest {
    private static final ClimbPath PATH = Scene.calmStandardClimb();
    private static final double FOOT = 0.3048;

    static CloudAhead cloud(
            double base, double top, double near, double far, double growth, double error) {
        return new CloudAhead(
                GeometricAltitude.ofFeet(base),
                GeometricAltitude.ofFeet(top),
                GroundDistance.ofNauticalMiles(near),
                GroundDistance.ofNauticalMiles(far),
                GeometricRate.ofFeetPerMinute(growth),
                GroundDistance.ofNauticalMiles(error));
    }

    static double marginByHand(ClimbPath path, double top, double growth, double mile) {
        ClimbState state = path.at(GroundDistance.ofNauticalMiles(mile));
        return state.air().geometricAltitude().orElseThrow().inMetres()
                - top * FOOT
                - growth * FOOT / 60.0 * state.timeS();
    }

    private static CloudTop over(double topFeet, double clearanceFeet) {
        return CloudTop.along(
                PATH, cloud(5000, topFeet, 40, 50, 300, 2), AltitudeChange.ofFeet(clearanceFeet));
    }

    @Test
    @DisplayName("has the margin of the path's true altitude less the grown top, by hand")
    void marginsByHand() {
        CloudTop found = over(8000, 1000);
        CloudTop.Margin edge = found.nearEdge().orElseThrow();
        assertThat(edge.asGiven().inMetres())
                .isCloseTo(marginByHand(PATH, 8000, 300, 40), within(1e-5));
        assertThat(edge.least().inMetres())
                .isCloseTo(marginByHand(PATH, 8000, 300, 38), within(1e-5));
        assertThat(edge.most().inMetres())
                .isCloseTo(marginByHand(PATH, 8000, 300, 42), within(1e-5));
        CloudTop.Margin whole = found.overCloud().orElseThrow();
        assertThat(whole.asGiven()).isEqualTo(edge.asGiven());
        assertThat(whole.least()).isEqualTo(edge.least());
        assertThat(whole.most().inMetres())
                .isCloseTo(marginByHand(PATH, 8000, 300, 52), within(1e-5));
        double minutes = PATH.at(GroundDistance.ofNauticalMiles(38)).timeS() / 60.0;
        assertThat(found.growth().orElseThrow().inFeet()).isCloseTo(300 * minutes, within(1e-4));
    }

    @Test
    @DisplayName("tops it by the clearance, by less, or not, as the worst margin is")
    void answers() {
        double least = over(8000, 1).overCloud().orElseThrow().least().inFeet();
        assertThat(least).isPositive();
        assertThat(over(8000, least - 0.1).answer()).isEqualTo(Answer.TOPS_BY_CLEARANCE);
        assertThat(over(8000, least + 0.1).answer()).isEqualTo(Answer.TOPS_BY_LESS);
        assertThat(over(8000 + least + 0.1, 1).answer()).isEqualTo(Answer.DOES_NOT_TOP);
        assertThat(over(8000 + least + 0.1, 1).atNearEdge()).isEqualTo(AtNearEdge.ABOVE);
        assertThat(over(8000, 1).reasons()).anyMatch(reason -> reason.contains("least margin"));
    }

    @Test
    @DisplayName("gives margins and no verdict without a clearance, however far above it is")
    void noVerdict() {
        for (double top : new double[] {6000, 34000}) {
            CloudTop found = CloudTop.along(PATH, cloud(5000, top, 40, 50, 0, 2));
            assertThat(found.answer()).isEqualTo(Answer.NO_VERDICT);
            assertThat(found.overCloud()).isPresent();
            assertThat(found.toString()).contains("no clearance was given").doesNotContain("safe");
        }
    }

    @Test
    @DisplayName("says that a cloud is entered, or passed below its base")
    void entered() {
        CloudTop inside = over(30000, 1000);
        assertThat(inside.atNearEdge()).isEqualTo(AtNearEdge.INSIDE);
        assertThat(inside.answer()).isEqualTo(Answer.DOES_NOT_TOP);
        assertThat(inside.reasons()).anyMatch(reason -> reason.contains("the cloud is entered"));
        CloudTop below = CloudTop.along(PATH, cloud(25000, 30000, 10, 20, 0, 0));
        assertThat(below.atNearEdge()).isEqualTo(AtNearEdge.BELOW);
    }

    @Test
    @DisplayName("cannot be told beyond the end of the climb, unless it is below the top before")
    void endsBefore() {
        AltitudeChange clearance = AltitudeChange.ofFeet(1000);
        CloudTop cut = CloudTop.along(PATH, cloud(5000, 10000, 100, 500, 0, 2), clearance);
        assertThat(cut.answer()).isEqualTo(Answer.CANNOT_BE_TOLD);
        assertThat(cut.overCloud()).isPresent();
        assertThat(cut.toString()).contains("the climb ends before the end of the cloud");
        assertThat(CloudTop.along(PATH, cloud(5000, 60000, 100, 500, 0, 2), clearance).answer())
                .isEqualTo(Answer.DOES_NOT_TOP);
        CloudTop beyond = CloudTop.along(PATH, cloud(5000, 10000, 500, 501, 0, 2), clearance);
        assertThat(beyond.answer()).isEqualTo(Answer.CANNOT_BE_TOLD);
        assertThat(beyond.overCloud()).isEmpty();
        assertThat(beyond.nearEdge()).isEmpty();
        assertThat(beyond.atNearEdge()).isEqualTo(AtNearEdge.NOT_KNOWN);
    }

    @Test
    @DisplayName("cannot be told where the wind is not known, and can below that")
    void unknownWind() {
        double known = StandardAir.pressureFromAltitude(PressureAltitude.ofFeet(20000).inMetres());
        ClimbPath path =
                Scene.path(Scene.constantRate(1500), Atmosphere.standard(), new CalmBelow(known));
        CloudTop low = CloudTop.along(path, cloud(5000, 8000, 40, 41, 0, 0));
        assertThat(low.answer()).isEqualTo(Answer.NO_VERDICT);
        assertThat(low.overCloud().orElseThrow().least().inMetres())
                .isCloseTo(marginByHand(PATH, 8000, 0, 40), within(1e-5)); // as it states
        CloudTop high = CloudTop.along(path, cloud(5000, 8000, 90, 95, 0, 0));
        assertThat(high.answer()).isEqualTo(Answer.CANNOT_BE_TOLD);
        assertThat(high.overCloud()).isEmpty();
        assertThat(high.toString()).contains("the wind or the true altitude is not known");
        CloudTop never =
                CloudTop.along(
                        Scene.path(
                                Scene.constantRate(1500),
                                Atmosphere.standard(),
                                new CalmBelow(2e5)),
                        cloud(5000, 8000, 40, 41, 0, 0),
                        AltitudeChange.ofFeet(1000));
        assertThat(never.answer()).isEqualTo(Answer.CANNOT_BE_TOLD);
    }

    /** No wind below a level, and nothing known above. */
    private record CalmBelow(double pressurePa) implements Winds {
        @Override
        public double eastward(double pa) {
            return covers(pa) ? 0.0 : Double.NaN;
        }

        @Override
        public double northward(double pa) {
            return eastward(pa);
        }

        @Override
        public boolean covers(double pa) {
            return pa >= pressurePa;
        }

        @Override
        public double[] bendsPa() {
            return new double[] {pressurePa};
        }
    }

    @Test
    @DisplayName("is told from where the climb begins, when the error reaches further back")
    void nearTheBeginning() {
        CloudTop found = CloudTop.along(PATH, cloud(5000, 10000, 1, 3, 0, 2));
        assertThat(found.toString()).contains("the cloud begins where the climb does");
        assertThat(found.overCloud().orElseThrow().least().inMetres())
                .isCloseTo(marginByHand(PATH, 10000, 0, 0), within(1e-5));
    }

    @Test
    @DisplayName("refuses a cloud that cannot be, and a clearance of nothing")
    void refuses() {
        assertThatThrownBy(() -> cloud(10000, 9000, 1, 2, 0, 0)).hasMessageContaining("its base");
        assertThatThrownBy(() -> cloud(0, 9000, 3, 2, 0, 0)).hasMessageContaining("near one first");
        assertThatThrownBy(() -> cloud(0, 9000, 1, 2, -1, 0)).hasMessageContaining("0 or more");
        assertThatThrownBy(() -> cloud(0, 9000, 1, 2, 0, -1)).hasMessageContaining("at least 0.0");
        assertThatThrownBy(() -> over(8000, 0)).hasMessageContaining("clearance above a cloud");
    }

    @Test
    @DisplayName("travels as bytes and arrives equal")
    void travels() throws IOException {
        CloudTop found = over(8000, 1000);
        Object arrived = Streams.roundTrip(found);
        assertThat(arrived).isEqualTo(found).hasSameHashCodeAs(found).hasToString(found.toString());
        assertThat(found).isNotEqualTo(over(9000, 1000));
    }
}
