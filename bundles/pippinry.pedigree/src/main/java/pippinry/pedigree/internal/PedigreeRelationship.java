package pippinry.pedigree.internal;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.model.Program;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/** How genotypes are related by the pedigree on file. */
@Component
public final class PedigreeRelationship implements Relationship {

    @Activate
    public PedigreeRelationship() {}

    @Override
    public double coancestry(Program program, Code<Genotype> one, Code<Genotype> other) {
        return ProgramPedigree.of(program).coancestry(one, other);
    }

    @Override
    public double inbreeding(Program program, Code<Genotype> genotype) {
        ProgramPedigree pedigree = ProgramPedigree.of(program);
        return pedigree.kinship().inbreeding(pedigree.number(genotype));
    }

    @Override
    public List<String> doubts(Program program, Code<Genotype> one, Code<Genotype> other) {
        ProgramPedigree pedigree = ProgramPedigree.of(program);
        return pedigree.linksBetween(one, other).stream()
                .map(link -> LinkWords.doubt(pedigree.genotype(link.child()), link.side()))
                .flatMap(Optional::stream)
                .toList();
    }
}
