/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Nodes and the paths that join them: an immutable description.
 *
 * <p>Nodes never come or go during a run; connections do: {@link #withPaths} gives the same nodes other paths.
 */
public final class Network {

    private final List<Node> nodes;
    private final List<Path> paths;

    private Network(List<Node> nodes, List<Path> paths) {
        this.nodes = List.copyOf(nodes);
        this.paths = List.copyOf(paths);
        if (nodes.isEmpty()) {
            throw new IllegalArgumentException("network without nodes: expected at least one");
        }
        Set<String> names = new HashSet<>();
        for (Node node : nodes) {
            if (!names.add(node.name())) {
                throw new IllegalArgumentException("two nodes named " + node.name() + ": expected unique names");
            }
        }
        Set<String> pathNames = new HashSet<>();
        Set<Node> members = new HashSet<>(nodes);
        for (Path path : paths) {
            Node.requireName(path.name());
            if (!pathNames.add(path.name())) {
                throw new IllegalArgumentException("two paths named " + path.name() + ": expected unique names");
            }
            for (End end : path.ends()) {
                if (end instanceof Node node && !members.contains(node)) {
                    throw new IllegalArgumentException(
                            "path " + path.name() + " ends at " + node + ", which is not in the network");
                }
            }
            path.accounts().forEach(account -> requireAccount(path, account));
        }
    }

    /** Conservation rests on the accounts, so a path of a user's own must not state one that makes heat from nothing. */
    private static void requireAccount(Path path, Account account) {
        for (Account.Entry entry : account.entries()) {
            if (entry.end() < 0 || entry.end() >= path.ends().size()) {
                throw new IllegalArgumentException("path " + path.name() + ", account " + account.mechanism() + ": end "
                        + entry.end() + ", expected 0 to " + (path.ends().size() - 1));
            }
            if (entry.amount() < -1
                    || (path.ends().get(entry.end()) instanceof Node node
                            && entry.amount() >= node.store().amountCount())) {
                throw new IllegalArgumentException("path " + path.name() + ", account " + account.mechanism()
                        + ": amount " + entry.amount() + " of "
                        + path.ends().get(entry.end()) + ", which it does not have");
            }
        }
        List<Account.Entry> entries = account.entries();
        for (Account.Entry entry : entries) {
            if (!Double.isFinite(entry.factor())) {
                throw new IllegalArgumentException("path " + path.name() + ", account " + account.mechanism()
                        + ": factor " + entry.factor() + ", expected a finite number");
            }
        }
        if (account.heat()
                && !(entries.size() == 2
                        && entries.stream().allMatch(entry -> entry.amount() == -1)
                        && entries.get(0).factor() == -1
                        && entries.get(1).factor() == 1)) {
            throw new IllegalArgumentException("path " + path.name() + ", account " + account.mechanism()
                    + ": heat must leave one end and enter another, as Account.heat has it");
        }
    }

    /**
     * Builds a network.
     *
     * @param nodes at least one node, names unique, not modified
     * @param paths active paths, names unique and not blank, every node end among {@code nodes}, accounts fit for their ends, not
     *     modified
     * @return the network
     * @throws IllegalArgumentException if a condition is broken
     */
    public static Network of(List<Node> nodes, List<? extends Path> paths) {
        return new Network(nodes, List.copyOf(paths));
    }

    /**
     * The same nodes under other connections.
     *
     * @param newPaths the paths that are active from now on, not modified
     * @return a new network
     * @throws IllegalArgumentException if a path is not fit for these nodes
     */
    public Network withPaths(List<? extends Path> newPaths) {
        return new Network(nodes, List.copyOf(newPaths));
    }

    /**
     * The nodes.
     *
     * @return nodes in the order given
     */
    public List<Node> nodes() {
        return nodes;
    }

    /**
     * The active paths.
     *
     * @return paths in the order given
     */
    public List<Path> paths() {
        return paths;
    }

    /**
     * Flat arrays for the solver; the result is immutable and may be shared by threads.
     *
     * @return the prepared network
     */
    public PreparedNetwork prepare() {
        return new PreparedNetwork(this);
    }
}
