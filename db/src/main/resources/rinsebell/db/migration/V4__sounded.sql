-- What devices sounded, and when, as they say themselves: written behind, for reports alone. No fact rests on it, and
-- whatever can't be written is left out. Of a turn of a bell's plan each device has the first time.
create table sounded (
    kind varchar(40) not null,
    subject bigint not null,
    anchor bigint not null,
    turn_ms bigint not null,
    device varchar(64) not null,
    ear varchar(40) not null,
    at_ms bigint not null,
    awake_ms bigint not null,
    primary key (kind, subject, anchor, turn_ms, device)
);

create index sounded_by_at on sounded (at_ms);
