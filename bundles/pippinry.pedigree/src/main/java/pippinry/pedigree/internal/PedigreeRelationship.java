package pippinry.pedigree.internal;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.Program;
import pippinry.model.ask.Descent;
import pippinry.model.ask.ParentChance;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.traits.CropPack;

/** How genotypes are related by the pedigree on file, and how sure that is. Without a crop pack only S-alleles are weighed. */
@Component
public final class PedigreeRelationship implements Relationship, Descent {
    private final Snapshots<ProgramLineage> lineages;

    @Activate
    public PedigreeRelationship(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        List<CropPack> these = List.copyOf(packs);
        this.lineages = new Snapshots<>(program -> ProgramLineage.of(program, these));
    }

    @Override
    public double coancestry(Program program, Code<Genotype> one, Code<Genotype> other) {
        return lineages.of(program).pedigree().coancestry(one, other);
    }

    @Override
    public double inbreeding(Program program, Code<Genotype> genotype) {
        ProgramPedigree pedigree = lineages.of(program).pedigree();
        return pedigree.kinship().inbreeding(pedigree.number(genotype));
    }

    @Override
    public List<String> doubts(Program program, Code<Genotype> one, Code<Genotype> other) {
        return lineages.of(program).doubtsBetween(one, other);
    }

    @Override
    public List<String> doubts(Program program, Code<Genotype> genotype) {
        return lineages.of(program).doubts(genotype);
    }

    @Override
    public List<ParentChance> pollenParents(Program program, Code<Genotype> genotype) {
        return lineages.of(program).pollenParents(genotype);
    }
}
