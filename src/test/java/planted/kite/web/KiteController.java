package planted.kite.web;

import org.springframework.web.bind.annotation.RestController;
import planted.kite.KiteRepository;

/** Wrongly goes past the service. */
@RestController
public class KiteController {
    private final KiteRepository repository;

    public KiteController(KiteRepository repository) {
        this.repository = repository;
    }

    public int count() {
        return repository.count();
    }
}
