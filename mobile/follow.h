// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

/// Points a view's `place`, a pointer or a QPointer, at a service and has its changes told to `told`, the old one's no longer;
/// false where it is the same one.
template <typename Service, typename Place, typename View, typename Told>
bool follow(View* view, Place& place, Service* service, Told told)
{
    if (place == service)
        return false;
    if (place)
        place->disconnect(view);
    place = service;
    if (service)
        QObject::connect(service, &Service::changed, view, told);
    return true;
}
