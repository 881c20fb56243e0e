-- With which account at an OpenID provider somebody may sign in: its issuer and subject, which never change.
create table provider_identity (
    issuer varchar(500) not null,
    subject varchar(255) not null,
    person_id varchar(36) not null references person (id),
    linked_at timestamp with time zone not null,
    last_used_at timestamp with time zone,
    constraint provider_identity_pk primary key (issuer, subject),
    constraint provider_identity_one_each unique (person_id, issuer)
);

-- For the steward's console.
create index audit_entry_event on audit_entry (event, id);
