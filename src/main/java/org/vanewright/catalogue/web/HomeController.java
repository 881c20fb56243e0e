package org.vanewright.catalogue.web;

import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.vanewright.catalogue.NewsItem;
import org.vanewright.catalogue.NewsSource;

/** The home page. */
@Controller
class HomeController {
    private static final int PER_FEATURE = 4;
    private static final int SHOWN = 8;

    private final List<NewsSource> sources;

    HomeController(List<NewsSource> sources) {
        this.sources = sources;
    }

    @GetMapping("/")
    String home(Model model) {
        List<NewsItem> news = sources.stream()
                .flatMap(s -> s.latest(PER_FEATURE).stream())
                .sorted(Comparator.comparing(NewsItem::at).reversed())
                .toList();
        model.addAttribute("news", news.stream().limit(SHOWN).toList());
        model.addAttribute(
                "start",
                news.stream()
                        .filter(NewsItem::invented)
                        .filter(n -> n.path().startsWith("/layouts/"))
                        // The first one published is the simplest.
                        .reduce((newer, older) -> older)
                        .orElse(null));
        return "catalogue/home";
    }
}
