-- What lists say of a published revision and is work to find out. It follows from that revision alone, can be made anew
-- at any time, and is looked at only where it was made by the rules of today.
create table record_summary (
    kind varchar(40) not null,
    slug varchar(80) not null,
    revision integer not null,
    version integer not null,
    summary text not null,
    constraint record_summary_key primary key (kind, slug, revision)
);

-- Who made what public, for the pages of people.
create index adhesive_revision_owner on adhesive_revision (contributor_id, state, published_at desc);
create index airframe_revision_owner on airframe_revision (contributor_id, state, published_at desc);
create index campaign_revision_owner on campaign_revision (contributor_id, state, published_at desc);
create index device_revision_owner on device_revision (contributor_id, state, published_at desc);
create index inspection_revision_owner on inspection_revision (contributor_id, state, published_at desc);
create index installation_revision_owner on installation_revision (contributor_id, state, published_at desc);
create index layout_revision_owner on layout_revision (contributor_id, state, published_at desc);
create index print_run_revision_owner on print_run_revision (contributor_id, state, published_at desc);
