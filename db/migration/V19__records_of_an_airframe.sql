-- Which airframe a layout or a campaign names, so that nobody looks for it in the text of each.
create table layout_airframe (
    slug varchar(80) not null,
    revision integer not null,
    airframe_slug varchar(80) not null,
    constraint layout_airframe_key primary key (slug, revision),
    constraint layout_airframe_revision foreign key (slug, revision)
        references layout_revision (slug, revision) on delete cascade
);
create index layout_airframe_airframe on layout_airframe (airframe_slug);

create table campaign_airframe (
    slug varchar(80) not null,
    revision integer not null,
    airframe_slug varchar(80) not null,
    constraint campaign_airframe_key primary key (slug, revision),
    constraint campaign_airframe_revision foreign key (slug, revision)
        references campaign_revision (slug, revision) on delete cascade
);
create index campaign_airframe_airframe on campaign_airframe (airframe_slug);

-- Properties of canonical JSON stand in the order of their names, and quotes within text carry a backslash.
insert into layout_airframe (slug, revision, airframe_slug)
select slug, revision, airframe_slug
from (
    select slug, revision,
        regexp_substr(content, '"airframe":\{"revision":[0-9]+,"slug":"([a-z0-9-]{1,80})"\}', 1, 1, '', 1) as airframe_slug
    from layout_revision
) named
where airframe_slug is not null;

insert into campaign_airframe (slug, revision, airframe_slug)
select slug, revision, airframe_slug
from (
    select slug, revision,
        regexp_substr(content, '"airframe":\{"revision":[0-9]+,"slug":"([a-z0-9-]{1,80})"\}', 1, 1, '', 1) as airframe_slug
    from campaign_revision
) named
where airframe_slug is not null;
