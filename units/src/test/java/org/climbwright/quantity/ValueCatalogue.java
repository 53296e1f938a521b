package org.climbwright.quantity;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.DensityAltitude;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.altitude.IndicatedAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.altitude.VerticalPosition;
import org.climbwright.quantity.humidity.MixingRatio;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.FuelFlow;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.Slope;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.CabinPressureRate;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.pressure.DynamicPressure;
import org.climbwright.quantity.pressure.ImpactPressure;
import org.climbwright.quantity.pressure.PressureValue;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.pressure.TotalPressure;
import org.climbwright.quantity.pressure.VapourPressure;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.CabinAltitudeRate;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.IndicatedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.speed.SpeedValue;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.speed.WindSpeed;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.FrostPoint;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.quantity.temperature.RecoveryTemperature;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.quantity.temperature.TemperatureInterval;
import org.climbwright.quantity.temperature.TemperaturePoint;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.climbwright.unit.Gradient;
import org.climbwright.unit.MassFlow;
import org.climbwright.unit.PressureRate;
import org.climbwright.unit.UnitScale;

/**
 * Every value type there is, so that what holds for all is asked of all.
 *
 * <p>That none is missing, and none of its doors, is a test of its own: {@link ValueCatalogueTest}.
 */
public final class ValueCatalogue {
    private static final double NO_BOUND = ValueType.UNBOUNDED;

    private static final List<ValueType<?>> ALL =
            Stream.of(
                            positions(),
                            lengths(),
                            speeds(),
                            rates(),
                            numbers(),
                            pressures(),
                            pressureRates(),
                            temperatures(),
                            humidities(),
                            path())
                    .<ValueType<?>>flatMap(List::stream)
                    .toList();

    private ValueCatalogue() {}

    /** Every value type. */
    public static Stream<ValueType<?>> all() {
        return ALL.stream();
    }

    /** Every value type with a certain factory, such as {@code ofFeet}. */
    public static Stream<ValueType<?>> having(String entrance) {
        return all().filter(type -> type.has(entrance));
    }

    /** Every value type that takes units of javax.measure. */
    public static Stream<ValueType<?>> withUnits() {
        return all().filter(type -> type.units() != null);
    }

    /** The value type of a class. */
    public static <T extends Scalar<T>> ValueType<T> of(Class<T> type) {
        for (ValueType<?> candidate : ALL) {
            if (candidate.type() == type) {
                @SuppressWarnings("unchecked") // the class is the same
                ValueType<T> found = (ValueType<T>) candidate;
                return found;
            }
        }
        throw new AssertionError(type + " is not in the catalogue");
    }

    private static List<ValueType<?>> positions() {
        return List.of(
                position(
                        "pressure altitude",
                        PressureAltitude.class,
                        PressureAltitude::ofMetres,
                        PressureAltitude::ofFeet,
                        PressureAltitude::of,
                        PressureAltitude::of,
                        PressureAltitude::parse),
                position(
                        "geopotential altitude",
                        GeopotentialAltitude.class,
                        GeopotentialAltitude::ofMetres,
                        GeopotentialAltitude::ofFeet,
                        GeopotentialAltitude::of,
                        GeopotentialAltitude::of,
                        GeopotentialAltitude::parse),
                position(
                        "geometric altitude",
                        GeometricAltitude.class,
                        GeometricAltitude::ofMetres,
                        GeometricAltitude::ofFeet,
                        GeometricAltitude::of,
                        GeometricAltitude::of,
                        GeometricAltitude::parse),
                position(
                        "altitude on QNH",
                        AltitudeOnQnh.class,
                        AltitudeOnQnh::ofMetres,
                        AltitudeOnQnh::ofFeet,
                        AltitudeOnQnh::of,
                        AltitudeOnQnh::of,
                        AltitudeOnQnh::parse),
                position(
                        "indicated altitude",
                        IndicatedAltitude.class,
                        IndicatedAltitude::ofMetres,
                        IndicatedAltitude::ofFeet,
                        IndicatedAltitude::of,
                        IndicatedAltitude::of,
                        IndicatedAltitude::parse),
                position(
                        "density altitude",
                        DensityAltitude.class,
                        DensityAltitude::ofMetres,
                        DensityAltitude::ofFeet,
                        DensityAltitude::of,
                        DensityAltitude::of,
                        DensityAltitude::parse),
                position(
                        "cabin altitude",
                        CabinAltitude.class,
                        CabinAltitude::ofMetres,
                        CabinAltitude::ofFeet,
                        CabinAltitude::of,
                        CabinAltitude::of,
                        CabinAltitude::parse),
                position(
                        "height",
                        Height.class,
                        Height::ofMetres,
                        Height::ofFeet,
                        Height::of,
                        Height::of,
                        Height::parse));
    }

    private static <T extends VerticalPosition<T>> ValueType<T> position(
            String term,
            Class<T> type,
            DoubleFunction<T> ofMetres,
            DoubleFunction<T> ofFeet,
            UnitDoor.NumberWithUnit<T, Length> of,
            Function<Quantity<Length>, T> ofQuantity,
            Function<String, T> parse) {
        return unbounded(
                term,
                type,
                List.of(
                        Door.of("Metres", UnitScale.METRE, ofMetres, T::inMetres),
                        Door.of("Feet", UnitScale.FOOT, ofFeet, T::inFeet)),
                parse,
                new UnitDoor<>(of, ofQuantity, T::valueIn, T::toQuantity),
                1000.0,
                11000.0);
    }

    private static List<ValueType<?>> lengths() {
        return List.of(
                unbounded(
                        "altitude change",
                        AltitudeChange.class,
                        List.of(
                                Door.of(
                                        "Metres",
                                        UnitScale.METRE,
                                        AltitudeChange::ofMetres,
                                        AltitudeChange::inMetres),
                                Door.of(
                                        "Feet",
                                        UnitScale.FOOT,
                                        AltitudeChange::ofFeet,
                                        AltitudeChange::inFeet)),
                        AltitudeChange::parse,
                        new UnitDoor<AltitudeChange, Length>(
                                AltitudeChange::of,
                                AltitudeChange::of,
                                AltitudeChange::valueIn,
                                AltitudeChange::toQuantity),
                        -100.0,
                        300.0),
                unbounded(
                                "distance over the ground",
                                GroundDistance.class,
                                List.of(
                                        Door.of(
                                                "Metres",
                                                UnitScale.METRE,
                                                GroundDistance::ofMetres,
                                                GroundDistance::inMetres),
                                        Door.of(
                                                "NauticalMiles",
                                                UnitScale.NAUTICAL_MILE,
                                                GroundDistance::ofNauticalMiles,
                                                GroundDistance::inNauticalMiles)),
                                GroundDistance::parse,
                                new UnitDoor<GroundDistance, Length>(
                                        GroundDistance::of,
                                        GroundDistance::of,
                                        GroundDistance::valueIn,
                                        GroundDistance::toQuantity),
                                1000.0,
                                90000.0)
                        .from(0.0));
    }

    private static List<ValueType<?>> speeds() {
        return List.of(
                speed(
                                "calibrated airspeed",
                                CalibratedAirspeed.class,
                                CalibratedAirspeed::ofMetresPerSecond,
                                Door.of(
                                        "Knots",
                                        UnitScale.KNOT,
                                        CalibratedAirspeed::ofKnots,
                                        CalibratedAirspeed::inKnots),
                                CalibratedAirspeed::of,
                                CalibratedAirspeed::of,
                                CalibratedAirspeed::parse)
                        .from(0.0),
                speed(
                                "equivalent airspeed",
                                EquivalentAirspeed.class,
                                EquivalentAirspeed::ofMetresPerSecond,
                                Door.of(
                                        "Knots",
                                        UnitScale.KNOT,
                                        EquivalentAirspeed::ofKnots,
                                        EquivalentAirspeed::inKnots),
                                EquivalentAirspeed::of,
                                EquivalentAirspeed::of,
                                EquivalentAirspeed::parse)
                        .from(0.0),
                speed(
                                "true airspeed",
                                TrueAirspeed.class,
                                TrueAirspeed::ofMetresPerSecond,
                                Door.of(
                                        "Knots",
                                        UnitScale.KNOT,
                                        TrueAirspeed::ofKnots,
                                        TrueAirspeed::inKnots),
                                TrueAirspeed::of,
                                TrueAirspeed::of,
                                TrueAirspeed::parse)
                        .from(0.0),
                speed(
                                "indicated airspeed",
                                IndicatedAirspeed.class,
                                IndicatedAirspeed::ofMetresPerSecond,
                                Door.of(
                                        "Knots",
                                        UnitScale.KNOT,
                                        IndicatedAirspeed::ofKnots,
                                        IndicatedAirspeed::inKnots),
                                IndicatedAirspeed::of,
                                IndicatedAirspeed::of,
                                IndicatedAirspeed::parse)
                        .from(0.0),
                speed(
                                "wind speed",
                                WindSpeed.class,
                                WindSpeed::ofMetresPerSecond,
                                Door.of(
                                        "Knots",
                                        UnitScale.KNOT,
                                        WindSpeed::ofKnots,
                                        WindSpeed::inKnots),
                                WindSpeed::of,
                                WindSpeed::of,
                                WindSpeed::parse)
                        .from(0.0),
                speed(
                                "ground speed",
                                GroundSpeed.class,
                                GroundSpeed::ofMetresPerSecond,
                                Door.of(
                                        "Knots",
                                        UnitScale.KNOT,
                                        GroundSpeed::ofKnots,
                                        GroundSpeed::inKnots),
                                GroundSpeed::of,
                                GroundSpeed::of,
                                GroundSpeed::parse)
                        .from(0.0),
                speed(
                        "along-track wind",
                        AlongTrackWind.class,
                        AlongTrackWind::ofMetresPerSecond,
                        Door.of(
                                "Knots",
                                UnitScale.KNOT,
                                AlongTrackWind::ofKnots,
                                AlongTrackWind::inKnots),
                        AlongTrackWind::of,
                        AlongTrackWind::of,
                        AlongTrackWind::parse),
                speed(
                        "airspeed difference",
                        AirspeedDifference.class,
                        AirspeedDifference::ofMetresPerSecond,
                        Door.of(
                                "Knots",
                                UnitScale.KNOT,
                                AirspeedDifference::ofKnots,
                                AirspeedDifference::inKnots),
                        AirspeedDifference::of,
                        AirspeedDifference::of,
                        AirspeedDifference::parse));
    }

    private static List<ValueType<?>> rates() {
        return List.of(
                speed(
                        "rate of pressure altitude",
                        PressureAltitudeRate.class,
                        PressureAltitudeRate::ofMetresPerSecond,
                        Door.of(
                                "FeetPerMinute",
                                UnitScale.FOOT_PER_MINUTE,
                                PressureAltitudeRate::ofFeetPerMinute,
                                PressureAltitudeRate::inFeetPerMinute),
                        PressureAltitudeRate::of,
                        PressureAltitudeRate::of,
                        PressureAltitudeRate::parse),
                speed(
                        "rate of cabin altitude",
                        CabinAltitudeRate.class,
                        CabinAltitudeRate::ofMetresPerSecond,
                        Door.of(
                                "FeetPerMinute",
                                UnitScale.FOOT_PER_MINUTE,
                                CabinAltitudeRate::ofFeetPerMinute,
                                CabinAltitudeRate::inFeetPerMinute),
                        CabinAltitudeRate::of,
                        CabinAltitudeRate::of,
                        CabinAltitudeRate::parse),
                speed(
                        "geometric rate",
                        GeometricRate.class,
                        GeometricRate::ofMetresPerSecond,
                        Door.of(
                                "FeetPerMinute",
                                UnitScale.FOOT_PER_MINUTE,
                                GeometricRate::ofFeetPerMinute,
                                GeometricRate::inFeetPerMinute),
                        GeometricRate::of,
                        GeometricRate::of,
                        GeometricRate::parse));
    }

    private static <T extends SpeedValue<T>> ValueType<T> speed(
            String term,
            Class<T> type,
            DoubleFunction<T> ofMetresPerSecond,
            Door<T> ofTheTrade,
            UnitDoor.NumberWithUnit<T, Speed> of,
            Function<Quantity<Speed>, T> ofQuantity,
            Function<String, T> parse) {
        return unbounded(
                term,
                type,
                List.of(
                        Door.of(
                                "MetresPerSecond",
                                UnitScale.METRE_PER_SECOND,
                                ofMetresPerSecond,
                                T::inMetresPerSecond),
                        ofTheTrade),
                parse,
                new UnitDoor<>(of, ofQuantity, T::valueIn, T::toQuantity),
                5.0,
                150.0);
    }

    private static List<ValueType<?>> numbers() {
        return List.of(
                unbounded(
                                "Mach number",
                                Mach.class,
                                List.of(
                                        new Door<Mach>(
                                                "of", "number", null, Mach::of, Mach::number)),
                                Mach::parse,
                                null,
                                0.3,
                                0.78)
                        .from(0.0));
    }

    private static List<ValueType<?>> pressures() {
        return List.of(
                pressure(
                                "static pressure",
                                StaticPressure.class,
                                List.of(
                                        pascals(StaticPressure::ofPascals),
                                        hectopascals(StaticPressure::ofHectopascals)),
                                StaticPressure::of,
                                StaticPressure::of,
                                StaticPressure::parse,
                                5000.0,
                                101325.0)
                        .from(0.0),
                pressure(
                                "total pressure",
                                TotalPressure.class,
                                List.of(
                                        pascals(TotalPressure::ofPascals),
                                        hectopascals(TotalPressure::ofHectopascals)),
                                TotalPressure::of,
                                TotalPressure::of,
                                TotalPressure::parse,
                                5000.0,
                                101325.0)
                        .from(0.0),
                pressure(
                                "impact pressure",
                                ImpactPressure.class,
                                List.of(
                                        pascals(ImpactPressure::ofPascals),
                                        hectopascals(ImpactPressure::ofHectopascals)),
                                ImpactPressure::of,
                                ImpactPressure::of,
                                ImpactPressure::parse,
                                5000.0,
                                101325.0)
                        .from(0.0),
                pressure(
                                "dynamic pressure",
                                DynamicPressure.class,
                                List.of(
                                        pascals(DynamicPressure::ofPascals),
                                        hectopascals(DynamicPressure::ofHectopascals)),
                                DynamicPressure::of,
                                DynamicPressure::of,
                                DynamicPressure::parse,
                                5000.0,
                                101325.0)
                        .from(0.0),
                pressure(
                                "vapour pressure",
                                VapourPressure.class,
                                List.of(
                                        pascals(VapourPressure::ofPascals),
                                        hectopascals(VapourPressure::ofHectopascals)),
                                VapourPressure::of,
                                VapourPressure::of,
                                VapourPressure::parse,
                                10.0,
                                1705.0)
                        .from(0.0),
                pressure(
                        "differential pressure",
                        DifferentialPressure.class,
                        List.of(
                                pascals(DifferentialPressure::ofPascals),
                                hectopascals(DifferentialPressure::ofHectopascals),
                                Door.of(
                                        "PoundsPerSquareInch",
                                        UnitScale.POUND_PER_SQUARE_INCH,
                                        DifferentialPressure::ofPoundsPerSquareInch,
                                        DifferentialPressure::inPoundsPerSquareInch)),
                        DifferentialPressure::of,
                        DifferentialPressure::of,
                        DifferentialPressure::parse,
                        -500.0,
                        53000.0),
                pressure(
                                "altimeter setting",
                                AltimeterSetting.class,
                                List.of(
                                        hectopascals(AltimeterSetting::ofHectopascals),
                                        pascals(AltimeterSetting::ofPascals),
                                        Door.of(
                                                "InchesOfMercury",
                                                UnitScale.INCH_OF_MERCURY,
                                                AltimeterSetting::ofInchesOfMercury,
                                                AltimeterSetting::inInchesOfMercury)),
                                AltimeterSetting::of,
                                AltimeterSetting::of,
                                AltimeterSetting::parse,
                                995.0,
                                1013.25)
                        .from(85000.0)
                        .upTo(110000.0));
    }

    private static List<ValueType<?>> pressureRates() {
        return List.of(
                unbounded(
                        "rate of cabin pressure",
                        CabinPressureRate.class,
                        List.of(
                                Door.of(
                                        "PascalsPerSecond",
                                        UnitScale.PASCAL_PER_SECOND,
                                        CabinPressureRate::ofPascalsPerSecond,
                                        CabinPressureRate::inPascalsPerSecond),
                                Door.of(
                                        "HectopascalsPerMinute",
                                        UnitScale.HECTOPASCAL_PER_MINUTE,
                                        CabinPressureRate::ofHectopascalsPerMinute,
                                        CabinPressureRate::inHectopascalsPerMinute),
                                Door.of(
                                        "PoundsPerSquareInchPerMinute",
                                        UnitScale.POUND_PER_SQUARE_INCH_PER_MINUTE,
                                        CabinPressureRate::ofPoundsPerSquareInchPerMinute,
                                        CabinPressureRate::inPoundsPerSquareInchPerMinute)),
                        CabinPressureRate::parse,
                        new UnitDoor<CabinPressureRate, PressureRate>(
                                CabinPressureRate::of,
                                CabinPressureRate::of,
                                CabinPressureRate::valueIn,
                                CabinPressureRate::toQuantity),
                        -30.0,
                        20.0));
    }

    private static <T extends PressureValue<T>> Door<T> pascals(DoubleFunction<T> ofPascals) {
        return Door.of("Pascals", UnitScale.PASCAL, ofPascals, T::inPascals);
    }

    private static <T extends PressureValue<T>> Door<T> hectopascals(
            DoubleFunction<T> ofHectopascals) {
        return Door.of("Hectopascals", UnitScale.HECTOPASCAL, ofHectopascals, T::inHectopascals);
    }

    private static <T extends PressureValue<T>> ValueType<T> pressure(
            String term,
            Class<T> type,
            List<Door<T>> doors,
            UnitDoor.NumberWithUnit<T, Pressure> of,
            Function<Quantity<Pressure>, T> ofQuantity,
            Function<String, T> parse,
            double low,
            double high) {
        UnitDoor<T, Pressure> units = new UnitDoor<>(of, ofQuantity, T::valueIn, T::toQuantity);
        return unbounded(term, type, doors, parse, units, low, high);
    }

    private static List<ValueType<?>> temperatures() {
        return List.of(
                temperature(
                        "static air temperature",
                        StaticAirTemperature.class,
                        StaticAirTemperature::ofKelvins,
                        StaticAirTemperature::ofCelsius,
                        StaticAirTemperature::of,
                        StaticAirTemperature::of,
                        StaticAirTemperature::parse),
                temperature(
                        "total air temperature",
                        TotalAirTemperature.class,
                        TotalAirTemperature::ofKelvins,
                        TotalAirTemperature::ofCelsius,
                        TotalAirTemperature::of,
                        TotalAirTemperature::of,
                        TotalAirTemperature::parse),
                temperature(
                        "recovery temperature",
                        RecoveryTemperature.class,
                        RecoveryTemperature::ofKelvins,
                        RecoveryTemperature::ofCelsius,
                        RecoveryTemperature::of,
                        RecoveryTemperature::of,
                        RecoveryTemperature::parse),
                temperature(
                        "dew point",
                        DewPoint.class,
                        DewPoint::ofKelvins,
                        DewPoint::ofCelsius,
                        DewPoint::of,
                        DewPoint::of,
                        DewPoint::parse),
                temperature(
                                "frost point",
                                FrostPoint.class,
                                FrostPoint::ofKelvins,
                                FrostPoint::ofCelsius,
                                FrostPoint::of,
                                FrostPoint::of,
                                FrostPoint::parse)
                        .upTo(273.16),
                interval(
                        "temperature difference",
                        TemperatureDifference.class,
                        TemperatureDifference::ofKelvins,
                        TemperatureDifference::of,
                        TemperatureDifference::of,
                        TemperatureDifference::parse),
                interval(
                        "ISA deviation",
                        IsaDeviation.class,
                        IsaDeviation::ofKelvins,
                        IsaDeviation::of,
                        IsaDeviation::of,
                        IsaDeviation::parse),
                interval(
                        "ISA deviation at altitude",
                        IsaDeviationAtAltitude.class,
                        IsaDeviationAtAltitude::ofKelvins,
                        IsaDeviationAtAltitude::of,
                        IsaDeviationAtAltitude::of,
                        IsaDeviationAtAltitude::parse));
    }

    private static <T extends TemperaturePoint<T>> ValueType<T> temperature(
            String term,
            Class<T> type,
            DoubleFunction<T> ofKelvins,
            DoubleFunction<T> ofCelsius,
            UnitDoor.NumberWithUnit<T, Temperature> of,
            Function<Quantity<Temperature>, T> ofQuantity,
            Function<String, T> parse) {
        return unbounded(
                        term,
                        type,
                        List.of(
                                Door.of("Kelvins", UnitScale.KELVIN, ofKelvins, T::inKelvins),
                                Door.of("Celsius", UnitScale.CELSIUS, ofCelsius, T::inCelsius)),
                        parse,
                        new UnitDoor<>(of, ofQuantity, T::valueIn, T::toQuantity),
                        216.65,
                        268.15)
                .from(0.0);
    }

    private static <T extends TemperatureInterval<T>> ValueType<T> interval(
            String term,
            Class<T> type,
            DoubleFunction<T> ofKelvins,
            UnitDoor.NumberWithUnit<T, Temperature> of,
            Function<Quantity<Temperature>, T> ofQuantity,
            Function<String, T> parse) {
        return unbounded(
                term,
                type,
                List.of(Door.of("Kelvins", UnitScale.KELVIN_DIFFERENCE, ofKelvins, T::inKelvins)),
                parse,
                new UnitDoor<>(of, ofQuantity, T::valueIn, T::toQuantity),
                -15.0,
                10.0);
    }

    private static List<ValueType<?>> humidities() {
        return List.of(
                unbounded(
                                "relative humidity",
                                RelativeHumidity.class,
                                List.of(
                                        Door.of(
                                                "Ratio",
                                                UnitScale.RELATIVE_HUMIDITY_RATIO,
                                                RelativeHumidity::ofRatio,
                                                RelativeHumidity::inRatio),
                                        Door.of(
                                                "Percent",
                                                UnitScale.PERCENT_RELATIVE_HUMIDITY,
                                                RelativeHumidity::ofPercent,
                                                RelativeHumidity::inPercent)),
                                RelativeHumidity::parse,
                                new UnitDoor<
                                        RelativeHumidity, org.climbwright.unit.RelativeHumidity>(
                                        RelativeHumidity::of,
                                        RelativeHumidity::of,
                                        RelativeHumidity::valueIn,
                                        RelativeHumidity::toQuantity),
                                0.2,
                                0.63)
                        .from(0.0)
                        .upTo(1.0),
                unbounded(
                                "mixing ratio",
                                MixingRatio.class,
                                List.of(
                                        Door.of(
                                                "KilogramsPerKilogram",
                                                UnitScale.KILOGRAM_PER_KILOGRAM,
                                                MixingRatio::ofKilogramsPerKilogram,
                                                MixingRatio::inKilogramsPerKilogram),
                                        Door.of(
                                                "GramsPerKilogram",
                                                UnitScale.GRAM_PER_KILOGRAM,
                                                MixingRatio::ofGramsPerKilogram,
                                                MixingRatio::inGramsPerKilogram)),
                                MixingRatio::parse,
                                new UnitDoor<MixingRatio, org.climbwright.unit.MixingRatio>(
                                        MixingRatio::of,
                                        MixingRatio::of,
                                        MixingRatio::valueIn,
                                        MixingRatio::toQuantity),
                                0.0001,
                                0.0149)
                        .from(0.0));
    }

    private static List<ValueType<?>> path() {
        return List.of(
                slope(
                        "gradient over the ground",
                        GroundGradient.class,
                        GroundGradient::ofMetresPerMetre,
                        GroundGradient::ofPercent,
                        GroundGradient::ofFeetPerNauticalMile,
                        GroundGradient::of,
                        GroundGradient::of,
                        GroundGradient::parse),
                slope(
                        "gradient through the air",
                        AirGradient.class,
                        AirGradient::ofMetresPerMetre,
                        AirGradient::ofPercent,
                        AirGradient::ofFeetPerNauticalMile,
                        AirGradient::of,
                        AirGradient::of,
                        AirGradient::parse),
                unbounded(
                                "climb angle",
                                ClimbAngle.class,
                                List.of(
                                        Door.of(
                                                "Radians",
                                                UnitScale.RADIAN,
                                                ClimbAngle::ofRadians,
                                                ClimbAngle::inRadians),
                                        Door.of(
                                                "Degrees",
                                                UnitScale.DEGREE,
                                                ClimbAngle::ofDegrees,
                                                ClimbAngle::inDegrees)),
                                ClimbAngle::parse,
                                new UnitDoor<ClimbAngle, Angle>(
                                        ClimbAngle::of,
                                        ClimbAngle::of,
                                        ClimbAngle::valueIn,
                                        ClimbAngle::toQuantity),
                                0.05,
                                0.1)
                        .from(-Math.PI / 2.0)
                        .upTo(Math.PI / 2.0),
                unbounded(
                                "direction",
                                TrueDirection.class,
                                List.of(
                                        Door.of(
                                                "Radians",
                                                UnitScale.RADIAN,
                                                TrueDirection::ofRadians,
                                                TrueDirection::inRadians),
                                        Door.of(
                                                "Degrees",
                                                UnitScale.DEGREE,
                                                TrueDirection::ofDegrees,
                                                TrueDirection::inDegrees)),
                                TrueDirection::parse,
                                new UnitDoor<TrueDirection, Angle>(
                                        TrueDirection::of,
                                        TrueDirection::of,
                                        TrueDirection::valueIn,
                                        TrueDirection::toQuantity),
                                0.05,
                                0.1)
                        .from(0.0)
                        .upTo(2.0 * Math.PI),
                unbounded(
                                "mass",
                                Mass.class,
                                List.of(
                                        Door.of(
                                                "Kilograms",
                                                UnitScale.KILOGRAM,
                                                Mass::ofKilograms,
                                                Mass::inKilograms)),
                                Mass::parse,
                                new UnitDoor<Mass, javax.measure.quantity.Mass>(
                                        Mass::of, Mass::of, Mass::valueIn, Mass::toQuantity),
                                40000.0,
                                70000.0)
                        .from(0.0),
                unbounded(
                                "fuel flow",
                                FuelFlow.class,
                                List.of(
                                        Door.of(
                                                "KilogramsPerSecond",
                                                UnitScale.KILOGRAM_PER_SECOND,
                                                FuelFlow::ofKilogramsPerSecond,
                                                FuelFlow::inKilogramsPerSecond),
                                        Door.of(
                                                "KilogramsPerHour",
                                                UnitScale.KILOGRAM_PER_HOUR,
                                                FuelFlow::ofKilogramsPerHour,
                                                FuelFlow::inKilogramsPerHour)),
                                FuelFlow::parse,
                                new UnitDoor<FuelFlow, MassFlow>(
                                        FuelFlow::of,
                                        FuelFlow::of,
                                        FuelFlow::valueIn,
                                        FuelFlow::toQuantity),
                                0.5,
                                2.0)
                        .from(0.0));
    }

    private static <T extends Slope<T>> ValueType<T> slope(
            String term,
            Class<T> type,
            DoubleFunction<T> ofMetresPerMetre,
            DoubleFunction<T> ofPercent,
            DoubleFunction<T> ofFeetPerNauticalMile,
            UnitDoor.NumberWithUnit<T, Gradient> of,
            Function<Quantity<Gradient>, T> ofQuantity,
            Function<String, T> parse) {
        return unbounded(
                term,
                type,
                List.of(
                        Door.of(
                                "MetresPerMetre",
                                UnitScale.METRE_PER_METRE,
                                ofMetresPerMetre,
                                T::inMetresPerMetre),
                        Door.of("Percent", UnitScale.PERCENT_GRADIENT, ofPercent, T::inPercent),
                        Door.of(
                                "FeetPerNauticalMile",
                                UnitScale.FOOT_PER_NAUTICAL_MILE,
                                ofFeetPerNauticalMile,
                                T::inFeetPerNauticalMile)),
                parse,
                new UnitDoor<>(of, ofQuantity, T::valueIn, T::toQuantity),
                -0.05,
                0.033);
    }

    private static <T extends Scalar<T>> ValueType<T> unbounded(
            String term,
            Class<T> type,
            List<Door<T>> doors,
            Function<String, T> parse,
            UnitDoor<T, ?> units,
            double low,
            double high) {
        return new ValueType<>(term, type, doors, parse, units, -NO_BOUND, NO_BOUND, low, high);
    }
}
