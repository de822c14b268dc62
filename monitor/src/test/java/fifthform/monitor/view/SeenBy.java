package fifthform.monitor.view;

import javafx.scene.paint.Color;

/**
 * Colours as eyes see them that lack one kind of cone. Matrices on linear RGB of Machado, Oliveira and Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", 2009, severity 1; from memory.
 */
enum SeenBy {
    MOST(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTAN(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    DEUTAN(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITAN(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    /** sRGB, IEC 61966-2-1, to CIE XYZ with D65; from memory. */
    private static final double[] TO_XYZ = {
        0.4124564, 0.3575761, 0.1804375, 0.2126729, 0.7151522, 0.0721750, 0.0193339, 0.1191920, 0.9503041
    };

    private static final double[] WHITE = {0.95047, 1, 1.08883};

    private final double[] matrix;

    SeenBy(double... matrix) {
        this.matrix = matrix;
    }

    /** CIE L*a*b* of the colour as these eyes see it. */
    double[] sees(Color color) {
        double[] seen =
                times(matrix, new double[] {linear(color.getRed()), linear(color.getGreen()), linear(color.getBlue())});
        for (int i = 0; i < 3; i++) seen[i] = Math.max(0, Math.min(1, seen[i]));
        double[] xyz = times(TO_XYZ, seen);
        double fx = cube(xyz[0] / WHITE[0]);
        double fy = cube(xyz[1] / WHITE[1]);
        double fz = cube(xyz[2] / WHITE[2]);
        return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
    }

    private static double[] times(double[] m, double[] v) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) product[i] = m[3 * i] * v[0] + m[3 * i + 1] * v[1] + m[3 * i + 2] * v[2];
        return product;
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    private static double cube(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    /** CIEDE2000 of two colours in L*a*b*; formula from memory, held by published pairs. */
    static double difference(double[] one, double[] other) {
        double chroma = (Math.hypot(one[1], one[2]) + Math.hypot(other[1], other[2])) / 2;
        double c7 = Math.pow(chroma, 7);
        double g = 0.5 * (1 - Math.sqrt(c7 / (c7 + Math.pow(25, 7))));
        double a1 = (1 + g) * one[1];
        double a2 = (1 + g) * other[1];
        double c1 = Math.hypot(a1, one[2]);
        double c2 = Math.hypot(a2, other[2]);
        double h1 = hue(a1, one[2]);
        double h2 = hue(a2, other[2]);
        double dh = c1 * c2 == 0 ? 0 : h2 - h1;
        if (dh > 180) dh -= 360;
        if (dh < -180) dh += 360;
        double dl = other[0] - one[0];
        double dc = c2 - c1;
        double dHue = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh / 2));
        double l = (one[0] + other[0]) / 2;
        double c = (c1 + c2) / 2;
        double h = c1 * c2 == 0
                ? h1 + h2
                : Math.abs(h1 - h2) <= 180 ? (h1 + h2) / 2 : (h1 + h2 + (h1 + h2 < 360 ? 360 : -360)) / 2;
        double t = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
        double sl = 1 + 0.015 * Math.pow(l - 50, 2) / Math.sqrt(20 + Math.pow(l - 50, 2));
        double sc = 1 + 0.045 * c;
        double sh = 1 + 0.015 * c * t;
        double cc7 = Math.pow(c, 7);
        double rt = -2
                * Math.sqrt(cc7 / (cc7 + Math.pow(25, 7)))
                * Math.sin(Math.toRadians(60 * Math.exp(-Math.pow((h - 275) / 25, 2))));
        double x = dl / sl;
        double y = dc / sc;
        double z = dHue / sh;
        return Math.sqrt(x * x + y * y + z * z + rt * y * z);
    }

    private static double hue(double a, double b) {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
