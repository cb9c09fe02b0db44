module shop {
    requires io.github.bedjoint;
}
