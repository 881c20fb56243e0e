package org.vanewright.account;

import jakarta.annotation.PreDestroy;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.mail.javamail.MimeMessageHelper;
import org.springframework.stereotype.Component;

/**
 * Sends links to choose a new password where a mail server is set. It looks up the account behind the back of who asks,
 * so that the time of the answer does not tell whether there is one.
 */
@Component
class ResetMails {
    private static final Logger LOG = LoggerFactory.getLogger(ResetMails.class);
    private static final int MOST_WAITING = 200;

    private final Optional<JavaMailSender> sender;
    private final PersonRepository people;
    private final ResetLinks links;
    private final InstanceSettings instance;
    private final String from;
    private final ThreadPoolExecutor postman =
            new ThreadPoolExecutor(1, 1, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(MOST_WAITING), work -> {
                Thread thread = new Thread(work, "reset-mails");
                thread.setDaemon(true);
                return thread;
            });

    ResetMails(
            ObjectProvider<JavaMailSender> sender,
            PersonRepository people,
            ResetLinks links,
            InstanceSettings instance,
            @Value("${vanewright.mail-from:vanewright@localhost}") String from) {
        this.sender = Optional.ofNullable(sender.getIfAvailable());
        this.people = people;
        this.links = links;
        this.instance = instance;
        this.from = from;
    }

    boolean available() {
        return sender.isPresent();
    }

    /** Sends a link soon to whoever has that address and an open account. */
    void send(String email) {
        sender.ifPresent(mail -> {
            try {
                postman.execute(() -> sendNow(mail, email));
            } catch (RejectedExecutionException e) {
                LOG.warn("too many links to choose a new password wait to be mailed; one was not made");
            }
        });
    }

    private void sendNow(JavaMailSender mail, String email) {
        try {
            Optional<Person> person = people.findByEmail(email).filter(Person::active);
            if (person.isPresent()) {
                mail.send(message(mail, person.get()));
            }
        } catch (MailException | MessagingException | UnsupportedEncodingException e) {
            LOG.error("a link to choose a new password could not be mailed", e);
        } catch (RuntimeException e) {
            LOG.error("a link to choose a new password could not be made", e);
        }
    }

    private MimeMessage message(JavaMailSender mail, Person person)
            throws MessagingException, UnsupportedEncodingException {
        // A header is one line, whatever the name is made of.
        String name = instance.name().replaceAll("\\p{Cntrl}+", " ").strip();
        MimeMessage message = mail.createMimeMessage();
        MimeMessageHelper parts = new MimeMessageHelper(message, StandardCharsets.UTF_8.name());
        parts.setFrom(from, name);
        parts.setTo(person.email());
        parts.setSubject("Choose a new password for " + name);
        parts.setText(text(name, links.make(person, "by mail")));
        return message;
    }

    private static String text(String instance, String link) {
        return "Somebody, likely you, asked for a new password at " + instance + ".\n\n"
                + "Choose it here, within an hour; the link works once:\n\n" + link + "\n\n"
                + "If it was not you, do nothing: your password stays as it is.\n";
    }

    @PreDestroy
    void close() {
        postman.shutdown();
    }
}
