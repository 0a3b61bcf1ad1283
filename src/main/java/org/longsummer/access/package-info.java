/**
 * Who may do what, and how somebody shows who he is: people, their roles and depots, passwords, secrets, and the brake on guessing.
 *
 * <p>Knows neither SQL nor HTTP nor a fleet; the store keeps these records and the pages ask for them. Passwords are kept as Argon2id
 * hashes, every other secret as its SHA-256 hash; nothing here can be turned back into what was typed.
 */
package org.longsummer.access;
