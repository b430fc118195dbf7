package pippinry.model.ask;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * How genotypes are related by descent. Without it they count as unrelated, and whoever reckons with that says so.
 */
@ProviderType
public interface Relationship {

    /** Chance that one allele drawn at random from each is the same by descent; f(a, a) = (1 + F) / 2. */
    double coancestry(Program program, Code<Genotype> one, Code<Genotype> other);

    /** Inbreeding coefficient of the genotype itself. */
    double inbreeding(Program program, Code<Genotype> genotype);

    /** Links on the way from these two to their common ancestors that are not sure, in words; empty if all are sure. */
    List<String> doubts(Program program, Code<Genotype> one, Code<Genotype> other);
}
