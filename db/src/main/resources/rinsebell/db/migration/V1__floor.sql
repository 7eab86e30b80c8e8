-- How far in the journal the tables are: they hold exactly the facts up to this line.
create table journal_mark (
    only_row integer not null primary key check (only_row = 1),
    lines bigint not null,
    hash char(64) not null
);

insert into journal_mark (only_row, lines, hash)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

-- One row a press: who sent what, and what was answered. The same press again is answered the same.
create table press (
    id varchar(100) not null primary key,
    device varchar(100) not null,
    payload_hash char(64) not null,
    outcome varchar not null,
    recorded_ms bigint not null
);

create index press_by_recorded on press (recorded_ms);

-- One row a fact; never changed. Texts of people are not in here.
create table fact (
    seq bigint not null primary key,
    stream varchar(40) not null,
    kind varchar(60) not null,
    version integer not null,
    happened_ms bigint not null,
    recorded_ms bigint not null,
    by_staff bigint,
    press_id varchar(100) not null,
    body varchar not null
);

create index fact_by_stream on fact (stream, seq);

-- Labels, names and notes, by the fact they came with; the only place they stand, so that they can be erased.
create table text (
    fact_seq bigint not null primary key,
    body varchar not null
);
