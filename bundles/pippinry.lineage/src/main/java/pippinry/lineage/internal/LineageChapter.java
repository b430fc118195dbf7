package pippinry.lineage.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.lineage.internal.kin.ParentsInUse;
import pippinry.lineage.internal.kin.Relatives;
import pippinry.lineage.internal.view.Pictures;
import pippinry.model.Program;
import pippinry.model.ask.Relationship;
import pippinry.panels.Chapter;
import pippinry.panels.Page;

/** The book's chapter on how the parents in use are related. */
@Component
public final class LineageChapter implements Chapter {

    private static final int ORDER = 22;
    private static final int MOST_PARENTS = 12;

    private final Optional<Relationship> relationship;

    @Activate
    public LineageChapter(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Relationship relationship) {
        this.relationship = Optional.ofNullable(relationship);
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public String title() {
        return "How the parents are related";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        List<String> parents = ParentsInUse.of(program, MOST_PARENTS);
        Relatives relatives = new Relatives(program, relationship, Optional.empty());
        if (parents.size() > 1) {
            relatives.square(parents).ifPresent(square -> {
                List<String> names = parents.stream().map(relatives::name).toList();
                page.picture(
                        Pictures.square(names, square),
                        Pictures.SQUARE_ASPECT,
                        "Coancestry of each two parents of the latest crosses: the inbreeding of their seedlings. On the diagonal a "
                                + "parent's own, (1 + F)/2. By the pedigree on file; founders are taken as unrelated.");
            });
        }
    }
}
