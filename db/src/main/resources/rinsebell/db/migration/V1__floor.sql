-- Instants are milliseconds since 1970, UTC, in columns that end in _ms. A name of a thing is the number of the fact
-- that made it. Constants stand by their names in the floor.

-- How far in the journal the tables are: they hold exactly the facts up to this line.
create table journal_mark (
    only_row integer not null primary key check (only_row = 1),
    lines bigint not null,
    hash char(64) not null
);

insert into journal_mark (only_row, lines, hash)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

-- Each time the tables had to be made again from the journal, because the file before would not open.
create table rebuild (
    at_ms bigint not null primary key,
    reason varchar not null,
    set_aside varchar
);

-- One row a press: who sent what, and what was answered. The same press again is answered the same.
create table press (
    id varchar not null primary key,
    device varchar not null,
    payload_hash varchar not null,
    outcome varchar not null
);

-- One row a fact; never changed. Texts of people are not in here.
create table fact (
    seq bigint not null primary key,
    stream varchar(40) not null,
    kind varchar(60) not null,
    version integer not null,
    happened_ms bigint not null,
    recorded_ms bigint not null,
    by_staff bigint,
    press_id varchar not null,
    body varchar not null
);

create index fact_by_stream on fact (stream, seq);
create index fact_by_kind on fact (kind, seq);

-- Labels, names and notes, by the fact they came with; the only place they stand, so that they can be erased.
create table text (
    fact_seq bigint not null primary key,
    body varchar not null
);

-- People who come again. Their numbers stand in facts, so none is ever given twice.
create table client (
    id bigint not null primary key,
    label varchar not null
);

create table client_number (
    only_row integer not null primary key check (only_row = 1),
    last bigint not null
);

insert into client_number (only_row, last)
values (1, 0);

-- Tests and reactions that were told of outside a visit.
create table client_note (
    client_id bigint not null references client (id) on delete cascade,
    kind varchar(40) not null,
    noted_on date not null,
    primary key (client_id, kind, noted_on)
);

-- From here on: what the facts of a visit come to, written when it begins, ends or is corrected after its end. These
-- rows are for looking things up and for reports; they can be made again from the facts at any time.
create table visit (
    id bigint not null primary key,
    label_seq bigint not null,
    client_id bigint,
    stylist bigint,
    helper bigint,
    chair integer,
    arrived_ms bigint not null,
    left_ms bigint,
    skin_test varchar(40),
    skin_test_on date,
    scalp varchar(40),
    earlier_reaction varchar(40),
    metal varchar(40),
    under_16 varchar(40)
);

create index visit_by_left on visit (left_ms);
create index visit_by_client on visit (client_id, arrived_ms);

create table bowl (
    visit_id bigint not null references visit (id) on delete cascade,
    id bigint not null,
    root_id bigint not null,
    mixed_ms bigint not null,
    reason varchar(40) not null,
    thrown_away_ms bigint,
    primary key (visit_id, id)
);

create index bowl_by_id on bowl (id);
create index bowl_by_root on bowl (root_id);

create table portion (
    visit_id bigint not null,
    bowl_id bigint not null,
    place integer not null,
    product_id bigint not null,
    edition integer not null,
    product varchar not null,
    grams decimal(20, 6) not null,
    primary key (visit_id, bowl_id, place),
    foreign key (visit_id, bowl_id) references bowl (visit_id, id) on delete cascade
);

create table application (
    id bigint not null primary key,
    visit_id bigint not null references visit (id) on delete cascade,
    bowl_id bigint not null,
    area varchar(40) not null,
    zone varchar(40) not null,
    cover varchar(40) not null,
    first_on_ms bigint not null,
    last_on_ms bigint,
    ended_ms bigint,
    ending varchar(40)
);

create index application_by_visit on application (visit_id);

create table heat (
    fact_seq bigint not null primary key,
    visit_id bigint not null references visit (id) on delete cascade,
    heat varchar(40) not null,
    from_ms bigint not null,
    until_ms bigint
);

create index heat_by_visit on heat (visit_id);

-- A decision is RINSE, LOOK_AGAIN with a time, or null for "by the directions".
create table strand_check (
    fact_seq bigint not null primary key,
    visit_id bigint not null references visit (id) on delete cascade,
    application_id bigint not null,
    at_ms bigint not null,
    level integer,
    tone varchar(40),
    stretch varchar(40),
    dryness varchar(40),
    decision varchar(40),
    again_ms bigint
);

create index strand_check_by_visit on strand_check (visit_id);

create table scalp_check (
    fact_seq bigint not null primary key,
    visit_id bigint not null references visit (id) on delete cascade,
    at_ms bigint not null,
    finding varchar(40) not null,
    decision varchar(40),
    again_ms bigint
);

create index scalp_check_by_visit on scalp_check (visit_id);

create table complaint (
    fact_seq bigint not null primary key,
    visit_id bigint not null references visit (id) on delete cascade,
    grade varchar(40) not null,
    at_ms bigint not null
);

create index complaint_by_visit on complaint (visit_id);
