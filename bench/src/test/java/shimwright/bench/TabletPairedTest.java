package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.KeyStore;
import java.security.KeyStoreException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shimwright.bench.web.pair.ShopCertificate;

/** A tablet-sized browser is paired over TLS, works, is let out, and is out. */
class TabletPairedTest {
    private static final String OTHER = "127.0.0.2";
    private static final String NOTHING = "0 workers, 0 lists, 0 words: ";
    private static DemoBench bench;
    private static Browser owner;
    private static Browser tablet;

    @BeforeAll
    static void start() throws KeyStoreException {
        bench = DemoBench.with("host", OTHER);
        owner = new Browser();
        ShopCertificate certificate =
                java.util.Objects.requireNonNull(bench.running().entrance().certificate());
        KeyStore keys = certificate.keys(new char[0]);
        tablet = Browser.trusting(keys.getCertificate(keys.aliases().nextElement()));
    }

    @AfterAll
    static void stop() {
        tablet.close();
        owner.close();
        bench.close();
    }

    private static String address(String path) {
        return "https://" + OTHER + ":" + bench.running().server().port() + path;
    }

    @Test
    void pairedRevokedAndOut() {
        tablet.tablet();
        tablet.open(address("/job/job-v-0093/build"));
        assertThat(tablet.path()).isEqualTo("/pair");
        assertThat(tablet.text())
                .contains(
                        "Pair this device",
                        java.util.Objects.requireNonNull(
                                        bench.running().entrance().certificate())
                                .fingerprint());
        assertThat(wide(tablet)).isTrue();
        tablet.picture("pair");

        owner.tablet();
        owner.open(bench.url("/devices"));
        owner.changes(() -> owner.one("form[action='/devices/code'] button").click());
        String code = owner.one(".code").getText();
        assertThat(owner.text())
                .contains(java.util.Objects.requireNonNull(
                                bench.running().entrance().certificate())
                        .fingerprint());
        owner.picture("devices-code");

        tablet.one("input[name=code]").sendKeys("wrong-code");
        tablet.one("input[name=name]").sendKeys("press tablet");
        tablet.changes(() -> tablet.one("form button").click());
        assertThat(tablet.text()).contains("that is not the code that is shown");

        // as the camera opens it from the QR code
        tablet.open(address("/pair?code=" + code));
        tablet.one("input[name=name]").sendKeys("press tablet");
        tablet.changes(() -> tablet.one("form button").click());
        assertThat(tablet.path()).isEqualTo("/");
        assertThat(tablet.text()).contains("V-0093");
        assertThat(tablet.script("return document.cookie").toString()).doesNotContain("device");

        tablet.open(address("/job/job-v-0093/build"));
        assertThat(tablet.one(".step .at").getText()).startsWith("E02");
        assertThat(post(tablet, "/job/job-v-0093/handback")).isEqualTo(403);
        assertThat(post(tablet, "/job/job-v-0093/note")).isEqualTo(200);
        assertThat(bench.get("/job/job-v-0093/record").body()).contains("(press tablet)");

        tablet.wait("it keeps the job in hand", () -> kept().contains("/job/job-v-0093/build") ? Boolean.TRUE : null);

        owner.open(bench.url("/devices"));
        assertThat(owner.text()).contains("press tablet");
        owner.picture("devices");
        owner.changes(() -> owner.one("form[action='/devices/revoke'] button").click());
        assertThat(owner.text()).contains("press tablet is let out");

        tablet.open(address("/job/job-v-0093/build"));
        assertThat(tablet.path()).isEqualTo("/pair");
        assertThat(tablet.text()).doesNotContain("V-0093");
        assertThat(post(tablet, "/job/job-v-0093/note")).isEqualTo(403);
        // the browser may still be throwing away, and answer for its stores only on a page opened anew
        for (int looks = 0; looks < 20 && !kept().equals(NOTHING); looks++) {
            tablet.open(address("/pair"));
        }
        assertThat(kept()).isEqualTo(NOTHING);
    }

    /** What the tablet holds of the shop: workers, lists of what was not sent, what it remembers, and pages. */
    private static String kept() {
        // what is asked for while the browser throws it away may never be answered: then it is asked again
        String look = """
                if (window.held) return window.held;
                const soon = (what, asked) => Promise.race([asked, new Promise((_, no) => setTimeout(() => no(what), 4000))]);
                (async () => {
                    const pages = [];
                    for (const name of await soon('caches', caches.keys())) {
                        for (const request of await soon('pages', caches.open(name).then(c => c.keys()))) pages.push(new URL(request.url).pathname);
                    }
                    const workers = await soon('workers', navigator.serviceWorker.getRegistrations());
                    const lists = await soon('lists', indexedDB.databases());
                    window.held = workers.length + ' workers, ' + lists.length + ' lists, ' + localStorage.length + ' words: '
                        + pages.join(' ');
                })().catch(hung => { window.held = 'no answer of ' + hung; });
                return ''""";
        tablet.script("window.held = ''; return 1");
        return tablet.wait("what it holds", () -> {
            String held = tablet.script(look).toString();
            return held.isEmpty() ? null : held;
        });
    }

    private static boolean wide(Browser browser) {
        return Boolean.TRUE.equals(
                browser.script(
                        "return document.documentElement.scrollWidth <= window.innerWidth && [...document.querySelectorAll('input,button')].every(e => e.getBoundingClientRect().height >= 44)"));
    }

    /** What the page itself gets when it posts a note or a hand-back. */
    private static int post(Browser browser, String path) {
        browser.script("window.got = 0; fetch('" + path
                + "', {method: 'POST', headers: {'Content-Type': 'application/x-www-form-urlencoded'},"
                + " body: 'step=E02&text=from+the+tablet&warranty=none&entry=tablet-note-' + Math.floor(performance.now())})"
                + ".then(a => window.got = a.status); return 1");
        return browser.wait("an answer", () -> {
            int status = ((Number) browser.script("return window.got")).intValue();
            return status == 0 ? null : status;
        });
    }
}
