-- How a file with a header of somebody's own is read, as somebody said it: the names of its columns with line ends between, what each
-- column is likewise (an empty line for what is left out), and the answers to what such files leave open, one a line as key=answer.
create table file_form (
    header text primary key,
    columns text not null,
    answers text not null,
    said_by text not null
);
