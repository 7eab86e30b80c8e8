-- Who looked at what is private, and who did what beside the floor: PINs, devices, records. A row is never changed; each
-- has the hash of the one before it and its own, so that a row that was changed by hand is found. No text of a person is in
-- here: subjects are numbers.
create table trail (
    id bigint not null primary key,
    at_ms bigint not null,
    device varchar(40) not null,
    staff bigint,
    matter varchar(40) not null,
    route varchar(100) not null,
    subject bigint,
    status integer not null,
    before_hash char(64) not null,
    hash char(64) not null
);

create index trail_by_at on trail (at_ms);

-- Presses are told by when they were recorded.
create index fact_by_recorded on fact (recorded_ms);
