package org.climbwright.atmosphere;

/**
 * The polynomials of {@link StandardAirKernel}, written by the program {@code KernelPolynomials} of
 * the tests in 60-digit arithmetic: change that, not this.
 *
 * <p>An error is the largest that the rounded coefficients leave, relative to what the kernel
 * computes. What rounding adds is for the kernel to tell.
 *
 * @source ICAO Doc 7488/3, the formulas of {@link StandardAir}
 */
final class StandardAirPolynomials {
    private StandardAirPolynomials() {}

    /** Pressure at the top, 11000 m. */
    static final double TROPOSPHERE_TOP_PA = 22632.0400950078;

    /** Density there [kg/m³]. */
    static final double TROPOSPHERE_TOP_DENSITY = 0.36391764810160343;

    static final double TROPOSPHERE_GAIN_CENTRE = 8000.0;

    static final double TROPOSPHERE_GAIN_HEAD = 5.934560800131581;

    /**
     * What the pressure gains per metre [Pa/m] to x metres below 11000 m, less its head. Of x from
     * 0 to 16000, taken from its centre; degree 11, error 1.8E-17.
     */
    static double troposphereGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, 1.2994309443305892E-55, -1.1075682908225568E-50);
        double c8to9 = Math.fma(x, 1.0208796744992986E-45, -1.1136881998790296E-40);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c6to7 = Math.fma(x, 1.4883313314511833E-35, -2.7716697056992007E-30);
        double c4to5 = Math.fma(x, 1.053510403183887E-24, 9.910869601538933E-19);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 1.5654056794534878E-13, 1.0800872869139345E-8);
        double c0to1 = Math.fma(x, 3.7260988752064355E-4, 2.2152259655353425E-17);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to11, c0to7);
    }

    static final double TROPOSPHERE_DENSITY_GAIN_CENTRE = 8000.0;

    static final double TROPOSPHERE_DENSITY_GAIN_HEAD = 6.815052663933581E-5;

    /**
     * What the density gains per metre to x metres below 11000 m, less its head. Of x from 0 to
     * 16000, taken from its centre; degree 11, error 1.6E-17.
     */
    static double troposphereDensityGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, -2.2200289453578137E-60, 1.6139858161464934E-55);
        double c8to9 = Math.fma(x, -1.2180500716721752E-50, 1.0505705238673419E-45);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c6to7 = Math.fma(x, -1.0313976188058508E-40, 1.2239566187090671E-35);
        double c4to5 = Math.fma(x, -1.991347669670228E-30, 6.469334487778531E-25);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 5.044353798274626E-19, 6.304930682396987E-14);
        double c0to1 = Math.fma(x, 3.182857791395063E-9, -3.2898907894966537E-21);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to11, c0to7);
    }

    /** Pressure at the top, 20000 m. */
    static final double TROPOPAUSE_TOP_PA = 5474.877424281046;

    /** Density there [kg/m³]. */
    static final double TROPOPAUSE_TOP_DENSITY = 0.08803468478868635;

    static final double TROPOPAUSE_GAIN_CENTRE = 4500.0;

    static final double TROPOPAUSE_GAIN_HEAD = 1.2570008187044526;

    /**
     * What the pressure gains per metre [Pa/m] to x metres below 20000 m, less its head. Of x from
     * 0 to 9000, taken from its centre; degree 13, error 6.3E-18.
     */
    static double tropopauseGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c12to13 = Math.fma(x, 7.218015852574903E-61, 6.39432798190727E-56);
        double c10to11 = Math.fma(x, 5.2075709304165726E-51, 3.945676333468343E-46);
        double c8to9 = Math.fma(x, 2.7384339164592576E-41, 1.725983182662874E-36);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to13 = Math.fma(x4, c12to13, c8to11);
        double c6to7 = Math.fma(x, 9.77760291428954E-32, 4.914510512977803E-27);
        double c4to5 = Math.fma(x, 2.155780839477099E-22, 8.07405890084338E-18);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 2.5043967294496423E-13, 6.147436381265947E-9);
        double c0to1 = Math.fma(x, 1.1073116474482165E-4, 8.452171445862768E-17);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to13, c0to7);
    }

    /** Pressure at the top, 32000 m. */
    static final double LOWER_STRATOSPHERE_TOP_PA = 868.0157766202134;

    /** Density there [kg/m³]. */
    static final double LOWER_STRATOSPHERE_TOP_DENSITY = 0.013224964644819119;

    static final double LOWER_STRATOSPHERE_GAIN_CENTRE = 6000.0;

    static final double LOWER_STRATOSPHERE_GAIN_HEAD = 0.2141786906054984;

    /**
     * What the pressure gains per metre [Pa/m] to x metres below 32000 m, less its head. Of x from
     * 0 to 12000, taken from its centre; degree 14, error 1.9E-17.
     */
    static double lowerStratosphereGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c12to13 = Math.fma(x, 1.0004710975986829E-60, 6.408444107401965E-56);
        double c12to14 = Math.fma(x2, 1.4446314787661627E-65, c12to13);
        double c10to11 = Math.fma(x, 3.9995861583905926E-51, 2.3544432121601495E-46);
        double c8to9 = Math.fma(x, 1.2975639202675657E-41, 6.643400123651791E-37);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to14 = Math.fma(x4, c12to14, c8to11);
        double c6to7 = Math.fma(x, 3.1287468290570667E-32, 1.3386177831415252E-27);
        double c4to5 = Math.fma(x, 5.119863702979919E-23, 1.7132196414661443E-18);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 4.8657614978647307E-14, 1.1204516776194915E-9);
        double c0to1 = Math.fma(x, 1.9364868788528304E-5, 6.395175050340037E-19);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to14, c0to7);
    }

    /** Pressure at the top, 47000 m. */
    static final double UPPER_STRATOSPHERE_TOP_PA = 110.90577336730986;

    /** Density there [kg/m³]. */
    static final double UPPER_STRATOSPHERE_TOP_DENSITY = 0.0014275266667897381;

    static final double UPPER_STRATOSPHERE_GAIN_CENTRE = 7500.0;

    static final double UPPER_STRATOSPHERE_GAIN_HEAD = 0.024828145360127916;

    /**
     * What the pressure gains per metre [Pa/m] to x metres below 47000 m, less its head. Of x from
     * 0 to 15000, taken from its centre; degree 17, error 2.4E-17.
     */
    static double upperStratosphereGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c16to17 = Math.fma(x, 9.345395252109895E-80, 5.1400212336877365E-75);
        double c14to15 = Math.fma(x, 2.5285368956598643E-70, 1.3216410454913087E-65);
        double c12to13 = Math.fma(x, 6.745342303421386E-61, 3.3278273520390485E-56);
        double c12to15 = Math.fma(x2, c14to15, c12to13);
        double c10to11 = Math.fma(x, 1.586419445893827E-51, 7.276899919109965E-47);
        double c8to9 = Math.fma(x, 3.1945295277173597E-42, 1.3333797611619116E-37);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to15 = Math.fma(x4, c12to15, c8to11);
        double c8to17 = Math.fma(x8, c16to17, c8to15);
        double c6to7 = Math.fma(x, 5.2482419003240695E-33, 1.927496278321016E-28);
        double c4to5 = Math.fma(x, 6.513575823337768E-24, 1.986831890297677E-19);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 5.32124400675773E-15, 1.1989606540397792E-10);
        double c0to1 = Math.fma(x, 2.1107534147508455E-6, 7.722844666011889E-19);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to17, c0to7);
    }

    /** Pressure at the top, 51000 m. */
    static final double STRATOPAUSE_TOP_PA = 66.93852812117963;

    /** Density there [kg/m³]. */
    static final double STRATOPAUSE_TOP_DENSITY = 8.616010783511165E-4;

    static final double STRATOPAUSE_GAIN_CENTRE = 2000.0;

    static final double STRATOPAUSE_GAIN_HEAD = 0.009611674965123303;

    /**
     * What the pressure gains per metre [Pa/m] to x metres below 51000 m, less its head. Of x from
     * 0 to 4000, taken from its centre; degree 9, error 1.9E-17.
     */
    static double stratopauseGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c8to9 = Math.fma(x, 2.386232662035438E-44, 1.886638025200655E-39);
        double c6to7 = Math.fma(x, 1.3395325628155333E-34, 8.460588899563338E-30);
        double c4to5 = Math.fma(x, 4.671253930358648E-25, 2.207421521351624E-20);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 8.672471495390152E-16, 2.714676718621962E-11);
        double c0to1 = Math.fma(x, 6.321213029465834E-7, 7.344601036212734E-20);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to9, c0to7);
    }

    /** Pressure at the top, 71000 m. */
    static final double LOWER_MESOSPHERE_TOP_PA = 3.956392160396599;

    /** Density there [kg/m³]. */
    static final double LOWER_MESOSPHERE_TOP_DENSITY = 6.421057314412153E-5;

    static final double LOWER_MESOSPHERE_GAIN_CENTRE = 10000.0;

    static final double LOWER_MESOSPHERE_GAIN_HEAD = 0.0013704118649720117;

    /**
     * What the pressure gains per metre [Pa/m] to x metres below 71000 m, less its head. Of x from
     * 0 to 20000, taken from its centre; degree 12, error 1.7E-17.
     */
    static double lowerMesosphereGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, 1.7820684067806803E-58, 1.527891977954241E-52);
        double c8to9 = Math.fma(x, 6.541344224387218E-47, 1.7468054652225922E-41);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to12 = Math.fma(x4, 3.2099395605382512E-65, c8to11);
        double c6to7 = Math.fma(x, 3.1897168452351445E-36, 4.165592005989894E-31);
        double c4to5 = Math.fma(x, 3.970447466700761E-26, 2.7706255919639354E-21);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 1.3965599737431197E-16, 4.908622791558362E-12);
        double c0to1 = Math.fma(x, 1.1160496830169482E-7, -7.098388239033538E-20);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to12, c0to7);
    }

    /** Pressure at the top, 80000 m. */
    static final double UPPER_MESOSPHERE_TOP_PA = 0.886272238579076;

    /** Density there [kg/m³]. */
    static final double UPPER_MESOSPHERE_TOP_DENSITY = 1.570042113233351E-5;

    static final double UPPER_MESOSPHERE_GAIN_CENTRE = 4500.0;

    static final double UPPER_MESOSPHERE_GAIN_HEAD = 2.2604213656970994E-4;

    /**
     * What the pressure gains per metre [Pa/m] to x metres below 80000 m, less its head. Of x from
     * 0 to 9000, taken from its centre; degree 11, error 4.4E-18.
     */
    static double upperMesosphereGain(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, 9.111694909465065E-57, 1.8403331753318034E-51);
        double c8to9 = Math.fma(x, 2.918731976132462E-46, 3.6875008646843785E-41);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c6to7 = Math.fma(x, 3.725506906833917E-36, 3.007542041273776E-31);
        double c4to5 = Math.fma(x, 1.9270165274347944E-26, 9.664307726373495E-22);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 3.704114867018464E-17, 1.0422492908527764E-12);
        double c0to1 = Math.fma(x, 2.003708387800202E-8, 1.0510335847864843E-20);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to11, c0to7);
    }

    /** Pressure about which z is taken. */
    static final double TROPOSPHERE_PRESSURE_CENTRE = 63434.0245;

    /** The altitude there [m]. */
    static final double TROPOSPHERE_PRESSURE_CENTRE_M = 3779.2781570375173;

    /** Altitude per z there [m]. */
    static final double TROPOSPHERE_PRESSURE_SPAN_M = -15430.90501256014;

    /** The power a of the temperature. */
    static final double TROPOSPHERE_PRESSURE_POWER = 0.19026310258854962;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.224862; degree 12, error
     * 4.4E-18.
     */
    static double tropospherePressureBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, -0.05249651362626424, 0.07346018776416172);
        double c8to9 = Math.fma(x, 0.031333228347133806, 0.04708091278540272);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to12 = Math.fma(x4, 0.13667255102029596, c8to11);
        double c6to7 = Math.fma(x, 0.05103432633035177, 0.05859471465765172);
        double c4to5 = Math.fma(x, 0.06827185758407249, 0.08159985767785977);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.10102901730742891, 0.1318835551547347);
        double c0to1 = Math.fma(x, 0.18810804306312648, 0.321266650597793);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to12, c0to7);
    }

    /** Density about which z is taken. */
    static final double TROPOSPHERE_DENSITY_CENTRE = 0.8382119085;

    /** The altitude there [m]. */
    static final double TROPOSPHERE_DENSITY_CENTRE_M = 3781.1728625274554;

    /** Altitude per z there [m]. */
    static final double TROPOSPHERE_DENSITY_SPAN_M = -19055.799577365204;

    /** The power a of the temperature. */
    static final double TROPOSPHERE_DENSITY_POWER = 0.2349690414216996;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.155805; degree 10, error
     * 9.9E-18.
     */
    static double troposphereDensityBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c8to9 = Math.fma(x, 0.018879901808912226, 0.046268425907657236);
        double c8to10 = Math.fma(x2, 0.0778489097987249, c8to9);
        double c6to7 = Math.fma(x, 0.047032770736357046, 0.05474126225217045);
        double c4to5 = Math.fma(x, 0.06407059189424434, 0.07703066201062869);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.09601791922227464, 0.12634885227204226);
        double c0to1 = Math.fma(x, 0.18200294236922807, 0.31492984985778927);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to10, c0to7);
    }

    /** Pressure about which z is taken. */
    static final double TROPOPAUSE_PRESSURE_CENTRE = 11134.3393;

    /** The altitude there [m]. */
    static final double TROPOPAUSE_PRESSURE_CENTRE_M = 15498.31492416696;

    /** Altitude per z there [m]. */
    static final double TROPOPAUSE_PRESSURE_SPAN_M = -12683.231131018238;

    /** What atanh(z) / z exceeds 1, over z². Of x from 0 to 0.116141; degree 9, error 8.8E-18. */
    static double isothermalBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c8to9 = Math.fma(x, 0.08287021142585221, 0.04301524097442309);
        double c6to7 = Math.fma(x, 0.06020325557305886, 0.06654944146521702);
        double c4to5 = Math.fma(x, 0.07692917782871612, 0.09090889879173944);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.11111111457179172, 0.14285714282558068);
        double c0to1 = Math.fma(x, 0.2000000000001114, 0.33333333333333326);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to9, c0to7);
    }

    /** Density about which z is taken. */
    static final double TROPOPAUSE_DENSITY_CENTRE = 0.179043697;

    /** The altitude there [m]. */
    static final double TROPOPAUSE_DENSITY_CENTRE_M = 15498.09338051987;

    /** Altitude per z there [m]. */
    static final double TROPOPAUSE_DENSITY_SPAN_M = -12683.231131018238;

    /** Pressure about which z is taken. */
    static final double LOWER_STRATOSPHERE_PRESSURE_CENTRE = 2180.654;

    /** The altitude there [m]. */
    static final double LOWER_STRATOSPHERE_PRESSURE_CENTRE_M = 25917.104515515788;

    /** Altitude per z there [m]. */
    static final double LOWER_STRATOSPHERE_PRESSURE_SPAN_M = -13029.633181314468;

    /** The power a of the temperature. */
    static final double LOWER_STRATOSPHERE_PRESSURE_POWER = -0.029271246552084556;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.185458; degree 11, error
     * 8.2E-18.
     */
    static double lowerStratospherePressureBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, 0.12062627266351675, -0.004003255572595002);
        double c8to9 = Math.fma(x, 0.06193138631260344, 0.04973926817648194);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c6to7 = Math.fma(x, 0.05896125567764635, 0.06643801944061238);
        double c4to5 = Math.fma(x, 0.07670936995180247, 0.0906791683911981);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.11086409908177394, 0.1425907441236475);
        double c0to1 = Math.fma(x, 0.19971449592397103, 0.3330477313750957);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to11, c0to7);
    }

    /** Density about which z is taken. */
    static final double LOWER_STRATOSPHERE_DENSITY_CENTRE = 0.0341312363;

    /** The altitude there [m]. */
    static final double LOWER_STRATOSPHERE_DENSITY_CENTRE_M = 25917.277565044846;

    /** Altitude per z there [m]. */
    static final double LOWER_STRATOSPHERE_DENSITY_SPAN_M = -12659.09579784029;

    /** The power a of the temperature. */
    static final double LOWER_STRATOSPHERE_DENSITY_POWER = -0.028438807214462812;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.194985; degree 11, error
     * 1.1E-17.
     */
    static double lowerStratosphereDensityBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, 0.12832211518499137, -0.011647222151889725);
        double c8to9 = Math.fma(x, 0.06522577760964061, 0.04895465428637135);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c6to7 = Math.fma(x, 0.059091033115487766, 0.06643792583096315);
        double c4to5 = Math.fma(x, 0.0767221169865502, 0.09069201810515341);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.11087793847390126, 0.14260567215621103);
        double c0to1 = Math.fma(x, 0.19973049862840944, 0.3330637447480728);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to11, c0to7);
    }

    /** Pressure about which z is taken. */
    static final double UPPER_STRATOSPHERE_PRESSURE_CENTRE = 310.36308099999997;

    /** The altitude there [m]. */
    static final double UPPER_STRATOSPHERE_PRESSURE_CENTRE_M = 39181.832712209376;

    /** Altitude per z there [m]. */
    static final double UPPER_STRATOSPHERE_PRESSURE_SPAN_M = -14562.979745951745;

    /** The power a of the temperature. */
    static final double UPPER_STRATOSPHERE_PRESSURE_POWER = -0.08195949034583676;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.224287; degree 12, error
     * 8.7E-18.
     */
    static double upperStratospherePressureBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c10to11 = Math.fma(x, -0.0608631656614952, 0.0841804192674359);
        double c8to9 = Math.fma(x, 0.035387843433698926, 0.05308771990622645);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to12 = Math.fma(x4, 0.15796759044249842, c8to11);
        double c6to7 = Math.fma(x, 0.05712389560901414, 0.06511206064729974);
        double c4to5 = Math.fma(x, 0.07524967953402623, 0.0891195166695163);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.10918557299425347, 0.14077730908688507);
        double c0to1 = Math.fma(x, 0.19776689703396289, 0.33109421398075023);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to12, c0to7);
    }

    /** Density about which z is taken. */
    static final double UPPER_STRATOSPHERE_DENSITY_CENTRE = 0.0043463035;

    /** The altitude there [m]. */
    static final double UPPER_STRATOSPHERE_DENSITY_CENTRE_M = 39181.97340983927;

    /** Altitude per z there [m]. */
    static final double UPPER_STRATOSPHERE_DENSITY_SPAN_M = -13459.84109285729;

    /** The power a of the temperature. */
    static final double UPPER_STRATOSPHERE_DENSITY_POWER = -0.0757509787354786;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.255691; degree 13, error
     * 9.1E-18.
     */
    static double upperStratosphereDensityBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c12to13 = Math.fma(x, 0.21433031639763175, -0.15518926419894924);
        double c10to11 = Math.fma(x, 0.1421868847231759, 0.007876949110925317);
        double c8to9 = Math.fma(x, 0.054176836675160114, 0.050240049418766856);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to13 = Math.fma(x4, c12to13, c8to11);
        double c6to7 = Math.fma(x, 0.0576813380538507, 0.06531264537577612);
        double c4to5 = Math.fma(x, 0.07549287638700046, 0.08937853371227837);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.10946467472131065, 0.14107922865100456);
        double c0to1 = Math.fma(x, 0.1980916533486106, 0.3314205964068723);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to13, c0to7);
    }

    /** Pressure about which z is taken. */
    static final double STRATOPAUSE_PRESSURE_CENTRE = 86.18784860000001;

    /** The altitude there [m]. */
    static final double STRATOPAUSE_PRESSURE_CENTRE_M = 48997.612464858794;

    /** Altitude per z there [m]. */
    static final double STRATOPAUSE_PRESSURE_SPAN_M = -15844.525758643369;

    /** Density about which z is taken. */
    static final double STRATOPAUSE_DENSITY_CENTRE = 0.0011093327;

    /** The altitude there [m]. */
    static final double STRATOPAUSE_DENSITY_CENTRE_M = 48997.87332719395;

    /** Altitude per z there [m]. */
    static final double STRATOPAUSE_DENSITY_SPAN_M = -15844.525758643369;

    /** Pressure about which z is taken. */
    static final double LOWER_MESOSPHERE_PRESSURE_CENTRE = 16.2788822;

    /** The altitude there [m]. */
    static final double LOWER_MESOSPHERE_PRESSURE_CENTRE_M = 61576.67328119207;

    /** Altitude per z there [m]. */
    static final double LOWER_MESOSPHERE_PRESSURE_SPAN_M = -14110.808255281509;

    /** The power a of the temperature. */
    static final double LOWER_MESOSPHERE_PRESSURE_POWER = 0.08195949034583676;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.371083; degree 16, error
     * 4.4E-18.
     */
    static double lowerMesospherePressureBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c14to15 = Math.fma(x, -1.9142883442122969, 2.118723368600701);
        double c12to13 = Math.fma(x, -1.358690376606298, 0.6694888235250526);
        double c12to15 = Math.fma(x2, c14to15, c12to13);
        double c10to11 = Math.fma(x, -0.1674791115250822, 0.09135257758655232);
        double c8to9 = Math.fma(x, 0.03762258016202702, 0.05235031813516926);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to15 = Math.fma(x4, c12to15, c8to11);
        double c8to16 = Math.fma(x8, 0.9096892170245957, c8to15);
        double c6to7 = Math.fma(x, 0.05723268333160689, 0.0651023917388428);
        double c4to5 = Math.fma(x, 0.07525022291728664, 0.08911949767851127);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.10918557338180777, 0.14077730908282493);
        double c0to1 = Math.fma(x, 0.19776689703397948, 0.33109421398075023);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to16, c0to7);
    }

    /** Density about which z is taken. */
    static final double LOWER_MESOSPHERE_DENSITY_CENTRE = 2.3528056299999998E-4;

    /** The altitude there [m]. */
    static final double LOWER_MESOSPHERE_DENSITY_CENTRE_M = 61576.60177757844;

    /** Altitude per z there [m]. */
    static final double LOWER_MESOSPHERE_DENSITY_SPAN_M = -15370.585314799107;

    /** The power a of the temperature. */
    static final double LOWER_MESOSPHERE_DENSITY_POWER = 0.0892765509625625;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.326483; degree 15, error
     * 1.2E-17.
     */
    static double lowerMesosphereDensityBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c14to15 = Math.fma(x, 0.48826219210272015, -0.7601675789297455);
        double c12to13 = Math.fma(x, 0.7089740758624685, -0.3231147427940247);
        double c12to15 = Math.fma(x2, c14to15, c12to13);
        double c10to11 = Math.fma(x, 0.1679084353894762, 0.008903969507838156);
        double c8to9 = Math.fma(x, 0.05214328547164683, 0.05014543430977803);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to15 = Math.fma(x4, c12to15, c8to11);
        double c6to7 = Math.fma(x, 0.05714630653062251, 0.06480017585478842);
        double c4to5 = Math.fma(x, 0.07494233261187477, 0.08878886618657171);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.10882920845103018, 0.14039158267502144);
        double c0to1 = Math.fma(x, 0.19735170257911755, 0.33067656581607635);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to15, c0to7);
    }

    /** Pressure about which z is taken. */
    static final double UPPER_MESOSPHERE_PRESSURE_CENTRE = 1.87306175;

    /** The altitude there [m]. */
    static final double UPPER_MESOSPHERE_PRESSURE_CENTRE_M = 75596.86960101343;

    /** Altitude per z there [m]. */
    static final double UPPER_MESOSPHERE_PRESSURE_SPAN_M = -12027.921730973712;

    /** The power a of the temperature. */
    static final double UPPER_MESOSPHERE_PRESSURE_POWER = 0.05854249310416911;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.127934; degree 10, error
     * 2.8E-18.
     */
    static double upperMesospherePressureBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c8to9 = Math.fma(x, 0.03266699648550524, 0.054506260667766426);
        double c8to10 = Math.fma(x2, 0.08446349197596441, c8to9);
        double c6to7 = Math.fma(x, 0.057775513920698136, 0.06588076331803948);
        double c4to5 = Math.fma(x, 0.07606492622535502, 0.08999244017559442);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.11012553399588447, 0.14179350356846854);
        double c0to1 = Math.fma(x, 0.19885915828182701, 0.33219092550038276);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to10, c0to7);
    }

    /** Density about which z is taken. */
    static final double UPPER_MESOSPHERE_DENSITY_CENTRE = 3.17605253E-5;

    /** The altitude there [m]. */
    static final double UPPER_MESOSPHERE_DENSITY_CENTRE_M = 75596.62168656047;

    /** Altitude per z there [m]. */
    static final double UPPER_MESOSPHERE_DENSITY_SPAN_M = -12775.882788053303;

    /** The power a of the temperature. */
    static final double UPPER_MESOSPHERE_DENSITY_POWER = 0.06218283106286457;

    /**
     * What tanh(a atanh z) / (a z) exceeds 1, over z². Of x from 0 to 0.11453; degree 9, error
     * 9.4E-18.
     */
    static double upperMesosphereDensityBend(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c8to9 = Math.fma(x, 0.08083418014300922, 0.042686574308945596);
        double c6to7 = Math.fma(x, 0.05925611540999637, 0.06564984953839433);
        double c4to5 = Math.fma(x, 0.0759620361102119, 0.08987524100436835);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.10999963139460062, 0.14165748751690285);
        double c0to1 = Math.fma(x, 0.19871309202756854, 0.3320444318403357);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to9, c0to7);
    }
}
