package pippinry.demo;

import java.time.LocalDate;

/** Names, wood and notes from before the first cross and from the years of the notebooks. */
final class Arrivals {

    private Arrivals() {}

    static void enter(Upkeep upkeep) {
        upkeep.name("BOSA", "the Old Lady", "nickname", "", "top-worked to 24 kinds since 2007");
        upkeep.name("COX", "Cox", "short name", "", "");
        upkeep.name("GOD", "Golden", "short name", "", "");
        upkeep.name("RIBA", "tree by the gate", "old tag", "about 2008", "tag copied from an older list");
        upkeep.move(LocalDate.of(2010, 2, 14), "TOPA", "wood", "in", "a club's scion day", "3 sticks", "");
        upkeep.move(LocalDate.of(2010, 2, 14), "SANA", "wood", "in", "a club's scion day", "2 sticks", "");
        upkeep.move(LocalDate.of(2010, 3, 6), "GORA", "wood", "in", "a fellow breeder", "4 sticks", "");
        upkeep.move(
                LocalDate.of(2010, 3, 20), "CRPA", "tree", "in", "a nursery", "1 tree", "ask before wood is passed on");
        upkeep.note(
                "RIBA", LocalDate.of(2011, 10, 9), "Fruit fits the name, but nobody has compared it with a sure tree.");
    }
}
