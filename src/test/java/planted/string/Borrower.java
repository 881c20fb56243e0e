package planted.string;

import planted.kite.Kite;
import planted.kite.KiteRepository;

/** Rightly uses another feature's record, wrongly its repository. */
public class Borrower {
    private final KiteRepository repository;

    public Borrower(KiteRepository repository) {
        this.repository = repository;
    }

    public int count(Kite kite) {
        return repository.count() + kite.name().length();
    }
}
