package pippinry.statistics.selection;

import org.hipparchus.special.Erf;

/**
 * What selection brings: the breeder's equation and its relatives.
 *
 * <p>Lush, J. L. 1945. Animal Breeding Plans; Falconer, D. S. & Mackay, T. F. C. 1996. Introduction to Quantitative Genetics, 4th
 * ed., chapters 8, 11, 13, 19. Normal values, additive inheritance.
 */
public final class Response {

    private Response() {}

    /** R = i h2 sigma_P, both parents selected alike. */
    public static double ofPhenotypes(double intensity, double heritability, double phenotypicDeviation) {
        return intensity * share(heritability) * phenotypicDeviation;
    }

    /** R = i r sigma_A. */
    public static double ofAccuracy(double intensity, double accuracy, double additiveDeviation) {
        return intensity * share(accuracy) * additiveDeviation;
    }

    /** Response in another trait: i h_x h_y r_G sigma_Py. */
    public static double correlated(
            double intensity, double rootOfSelected, double rootOfOther, double geneticCorrelation, double deviation) {
        return intensity * rootOfSelected * rootOfOther * geneticCorrelation * deviation;
    }

    /** Heritability of the mean of n records with this repeatability. */
    public static double heritabilityOfMean(double heritability, double repeatability, int records) {
        if (records < 1 || repeatability < heritability) {
            throw new IllegalArgumentException("One record or more, and a repeatability no less than the heritability: "
                    + records + ", " + repeatability + ", " + heritability);
        }
        return records * share(heritability) / (1 + (records - 1) * share(repeatability));
    }

    /** U = mean + i h sigma_A. Schnell, F. W. & Utz, H. F. 1975. Bericht der Arbeitstagung Gumpenstein, 243-248. */
    public static double usefulness(double mean, double intensity, double rootOfHeritability, double deviation) {
        return mean + intensity * share(rootOfHeritability) * deviation;
    }

    /** Probability that at least one of n normal values exceeds the threshold. */
    public static double atLeastOneAbove(double threshold, double mean, double deviation, int n) {
        if (n < 0 || !(deviation > 0)) {
            throw new IllegalArgumentException("A number and a positive deviation are needed: " + n + ", " + deviation);
        }
        double above = Erf.erfc((threshold - mean) / deviation / Math.sqrt(2)) / 2;
        return -Math.expm1(n * Math.log1p(-above));
    }

    private static double share(double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("Heritability and accuracy lie between 0 and 1, not " + value);
        }
        return value;
    }
}
