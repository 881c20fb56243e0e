-- Which layouts the configurations of a campaign name, so that nobody looks for them in the text of every campaign.
create table campaign_layout (
    slug varchar(80) not null,
    revision integer not null,
    layout_slug varchar(80) not null,
    constraint campaign_layout_key primary key (slug, revision, layout_slug),
    constraint campaign_layout_revision foreign key (slug, revision)
        references campaign_revision (slug, revision) on delete cascade
);
create index campaign_layout_layout on campaign_layout (layout_slug);

-- Properties of canonical JSON stand in the order of their names. One too many does no harm: who asks looks again.
insert into campaign_layout (slug, revision, layout_slug)
select c.slug, c.revision, l.slug
from campaign_revision c
join (select distinct slug from layout_revision) l
    on c.content like '%"layout":{"revision":%,"slug":"' || l.slug || '"}%';

-- Logs of drafts that were given up stayed until now.
delete from flight_log where draft_id in (select id from draft where state = 'DISCARDED');
